"""What a code carries: ids, digests, and what the engine makes the records again of."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Annotated, Final
from uuid import UUID

from planner.canonical import canonical
from planner.card.code.dictionary import DICTIONARY
from planner.card.code.slim import slim
from planner.card.code.squeeze import squeeze, unsqueeze
from planner.codec import parse, read
from planner.limits import IsoMoment, Length, Prose
from planner.records.case import Case
from planner.records.patient import Patient

ID, DIGEST = 16, 32
MOST_BYTES: Final = 60_000
"""A code that stands for more was not made here."""


@dataclass(frozen=True, kw_only=True)
class Told:
    """The part that is text. ``patient`` has no note: no card shows it."""

    engine: Annotated[str, Length(1, 20)]
    patient: Patient
    case: Case
    option: Annotated[str, Length(1, 400)]
    note: Annotated[str, Prose(0, 2000)] = ""
    signer: Annotated[str, Length(1, 120)]
    at: Annotated[str, IsoMoment()]


@dataclass(frozen=True, kw_only=True)
class Contents:
    """Everything. The digests are those of the records as they were stored."""

    plan_id: str
    patient_id: str
    examination_id: str
    plan_digest: str
    patient_digest: str
    examination_digest: str
    told: Told


IDS = ("plan_id", "patient_id", "examination_id")
DIGESTS = ("plan_digest", "patient_digest", "examination_digest")


def pack(contents: Contents) -> bytes:
    """The contents as bytes."""
    ids = b"".join(UUID(getattr(contents, name)).bytes for name in IDS)
    digests = b"".join(bytes.fromhex(getattr(contents, name)) for name in DIGESTS)
    told = replace(contents.told, patient=replace(contents.told.patient, note=""))
    return ids + digests + squeeze(canonical(slim(told)).encode(), DICTIONARY)


def unpack(data: bytes) -> Contents:
    """ValueError where it is no packed contents; :class:`Refused` where the text breaks a limit."""
    named = {}
    for name, size in (*((name, ID) for name in IDS), *((name, DIGEST) for name in DIGESTS)):
        taken, data = data[:size], data[size:]
        if len(taken) < size:
            raise ValueError("cut")
        named[name] = str(UUID(bytes=taken)) if size == ID else taken.hex()
    text = unsqueeze(data, DICTIONARY, most=MOST_BYTES).decode()
    return Contents(**named, told=read(Told, parse(text)))
