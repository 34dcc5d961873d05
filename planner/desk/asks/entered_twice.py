"""Which of some patients may be one person who was entered twice; a suggestion for people to look at."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import identity
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.limits import Length
from planner.records.patient import Patient
from planner.records.plan import RecordId


@dataclass(frozen=True, kw_only=True)
class Entered:
    """A patient: the id that all records name, and the present body."""

    id: RecordId
    body: Patient


@dataclass(frozen=True, kw_only=True)
class Asked:
    """Everybody who is compared with everybody."""

    patients: Annotated[tuple[Entered, ...], Length(0, 20_000)]


def ask(fields: Fields) -> object:
    """A list of ``Pair``: ``first``, ``second``, ``likeness``."""
    patients = {each.id: each.body for each in read(Asked, fields).patients}
    return [write(pair) for pair in identity.entered_twice(patients)]
