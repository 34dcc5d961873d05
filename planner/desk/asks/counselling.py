"""A plan in plain words for the patient or parent."""

from __future__ import annotations

from dataclasses import dataclass

from planner import counselling
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.plan import Plan
from planner.records.practice import Practice


@dataclass(frozen=True, kw_only=True)
class Counselled:
    """The body of a plan, signed or not, and the clinic's practice where it has one of its own."""

    plan: Plan
    practice: Practice | None = None


def ask(fields: Fields) -> object:
    """A ``CounsellingPage``; refused where this engine would not make the same plan."""
    asked = read(Counselled, fields)
    return write(counselling.counselling(asked.plan, asked.practice))
