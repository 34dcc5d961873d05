"""A visit after an operation before it is saved."""

from __future__ import annotations

from dataclasses import dataclass

from planner import followup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.followup.aftercare import Aftercare, Attended


@dataclass(frozen=True, kw_only=True)
class Reviewing:
    """The operation with its other visits, and this one."""

    care: Aftercare
    visit: Attended


def ask(fields: Fields) -> object:
    """A ``VisitReview``."""
    asked = read(Reviewing, fields)
    return write(followup.review(asked.care, asked.visit))
