"""The envelope of a pushed record: everything but the body, read with the engine's codec."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Annotated
from uuid import UUID

from clinic.ledger.models import Record
from clinic.sync.result import Rejected
from planner.canonical import canonical
from planner.codec import read
from planner.errors import Refused
from planner.limits import IsoMoment, Length, Pattern

Id = Annotated[str, Pattern(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", "a UUID in lower case")]
RecordId = Annotated[
    str,
    Pattern(
        r"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}", "a UUID of version 7 in lower case"
    ),
]
BESIDE_THE_ENVELOPE = frozenset({"body", "receipt", "seal"})
Digest = Annotated[str, Pattern(r"[0-9a-f]{64}", "a SHA-256 digest in lower-case hexadecimal")]


@dataclass(frozen=True, kw_only=True)
class Envelope:
    """As the device sent it; see :mod:`clinic.sync.protocol`."""

    id: RecordId
    kind: Annotated[str, Length(1, 20)]
    clinic: Id
    patient: Id
    author: Annotated[str, Length(1, 60)]
    device: Id
    recorded_at: Annotated[str, IsoMoment()]
    supersedes: Annotated[tuple[Id, ...], Length(0, 20)]
    digest: Digest

    @property
    def sameness(self) -> frozenset[tuple[str, object]]:
        """What two envelopes agree in when they are of one record: everything, but for the order of ``supersedes``."""
        return frozenset((vars(self) | {"supersedes": frozenset(self.supersedes)}).items())


@lru_cache(maxsize=2000)
def as_uuid(text: str) -> UUID:
    """An id of an envelope, which a batch asks for many times over: its device, its patients, what it supersedes."""
    return UUID(text)


def of_record(record: Record) -> Envelope:
    """The envelope that a stored record came in."""
    return Envelope(
        id=str(record.pk),
        kind=record.kind,
        clinic=str(record.clinic_id),
        patient=str(record.patient),
        author=record.author_id,
        device=str(record.device),
        recorded_at=record.recorded_at,
        supersedes=tuple(map(str, record.supersedes)),
        digest=record.digest,
    )


@dataclass(frozen=True, kw_only=True)
class Pushed:
    """A record as it came: its body not looked at yet, and what the device brings to vouch for it, if anything.

    ``text`` is the body's canonical JSON, where that had to be made already.
    """

    envelope: Envelope
    body: object
    receipt: str | None = None
    seal: str | None = None
    text: str | None = None

    def sealed_text(self) -> str:
        """What a device seals of a record of its own (:mod:`clinic.sync.carried`)."""
        return canonical(vars(self.envelope) | {"supersedes": sorted(self.envelope.supersedes)})


def split(raw: object, *, text: str | None = None) -> Pushed:
    """What makes up one pushed record, the ``text`` of its body being known or not; Rejected if it is no record."""
    if not isinstance(raw, dict):
        raise Rejected("record_malformed", "This is not a record.")
    if "body" not in raw:
        raise Rejected("missing", "This field is missing.", field="body")
    receipt = _text(raw, "receipt", "A receipt is text, as the server gave it.")
    seal = _text(raw, "seal", "A seal is text, as the device that made the record gave it.")
    try:
        envelope = read(Envelope, {name: value for name, value in raw.items() if name not in BESIDE_THE_ENVELOPE})
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=fault.field) from refused
    return Pushed(envelope=envelope, body=raw["body"], receipt=receipt, seal=seal, text=text)


def _text(raw: dict[str, object], name: str, otherwise: str) -> str | None:
    told = raw.get(name)
    if told is not None and not isinstance(told, str):
        raise Rejected("bad_type", otherwise, field=name)
    return told


def told_id(raw: object) -> str | None:
    """The id to answer with: what the device called the record, even if the rest cannot be read."""
    told = raw.get("id") if isinstance(raw, dict) else None
    try:
        return str(UUID(told)) if isinstance(told, str) else None
    except ValueError:
        return None
