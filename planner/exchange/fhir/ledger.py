"""The records that are exported or were brought: what each says, and what became of it since."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Annotated, TypeVar

from planner.canonical import digest
from planner.codec import read, read_body
from planner.errors import Fault, Refused
from planner.limits import IsoMoment, Length
from planner.records.follow_up import FollowUp
from planner.records.plan import Digest, RecordId
from planner.records.retraction import Retraction

Body = TypeVar("Body")


@dataclass(frozen=True, kw_only=True)
class Envelope:
    """Who, when, where, and what it replaces."""

    id: RecordId
    kind: Annotated[str, Length(1, 20)]
    clinic: RecordId
    patient: RecordId
    author: Annotated[str, Length(1, 60)]
    device: RecordId
    recorded_at: Annotated[str, IsoMoment()]
    supersedes: Annotated[tuple[RecordId, ...], Length(0, 20)] = ()
    digest: Digest


@dataclass(frozen=True, kw_only=True)
class Told:
    """A record: its envelope, its body as it came, and as a value."""

    envelope: Envelope
    body: object
    value: object

    @property
    def id(self) -> str:
        """The record's id."""
        return self.envelope.id

    @property
    def kind(self) -> str:
        """The record's kind."""
        return self.envelope.kind


def told(raw: object, where: str = "") -> Told:
    """A record from its JSON; :class:`Refused` with what is wrong, a body that is not the one digested included."""
    if not isinstance(raw, dict) or "body" not in raw:
        raise Refused(Fault(code="wrong_type", text="This is not a record.", field=where, allowed="a record"))
    envelope = read(Envelope, {name: value for name, value in raw.items() if name != "body"})
    value = read_body(envelope.kind, raw["body"])
    if digest(raw["body"]) != envelope.digest:
        text = "The digest does not belong to the body of the record."
        raise Refused(Fault(code="digest_mismatch", text=text, field=f"{where}digest"))
    return Told(envelope=envelope, body=raw["body"], value=value)


@dataclass(frozen=True)
class Ledger:
    """Records in the order in which they were made."""

    records: tuple[Told, ...]

    @cached_property
    def by_id(self) -> dict[str, Told]:
        """Each record by its id."""
        return {each.id: each for each in self.records}

    @cached_property
    def superseded(self) -> frozenset[str]:
        """What a later version replaced."""
        return frozenset(old for each in self.records for old in each.envelope.supersedes)

    @cached_property
    def taken_back(self) -> frozenset[str]:
        """What was retracted."""
        return frozenset(each.value.record_id for each in self.records if isinstance(each.value, Retraction))

    def stands(self, record_id: str) -> bool:
        """Whether a record is current."""
        return record_id not in self.superseded and record_id not in self.taken_back

    def of_kind(self, cls: type[Body]) -> Iterable[tuple[Told, Body]]:
        """The records of a kind with their values."""
        return ((each, each.value) for each in self.records if isinstance(each.value, cls))

    @cached_property
    def present_patients(self) -> dict[str, str]:
        """The current version of each patient's record by the first version's id."""
        return {
            each.envelope.patient: each.id for each in self.records if each.kind == "patient" and self.stands(each.id)
        }

    @cached_property
    def visits_of_examinations(self) -> dict[str, str]:
        """The visit at which something was measured, by the examination's id; the first that stands."""
        found: dict[str, str] = {}
        for each, visit in self.of_kind(FollowUp):
            if visit.examination_id and self.stands(each.id):
                found.setdefault(visit.examination_id, each.id)
        return found

    def patient_of(self, each: Told) -> str:
        """The id of the Patient that a record is about."""
        return self.present_patients.get(each.envelope.patient, each.envelope.patient)


def ledger_of(raw: Sequence[object]) -> Ledger:
    """The records of a request."""
    return Ledger(tuple(told(each, f"records.{place}.") for place, each in enumerate(raw)))
