"""A FHIR Bundle to records: the dry run. Nothing is saved by it."""

from __future__ import annotations

from dataclasses import dataclass

from planner.codec import read, write
from planner.desk.fields import Fields
from planner.exchange.fhir import Bringer, take


@dataclass(frozen=True, kw_only=True)
class Question:
    """Which field the Bundle came in; what is in it is judged resource by resource."""

    bundle: bool
    bringer: Bringer


def ask(fields: Fields) -> object:
    """A ``Taking``."""
    asked = read(Question, fields | ({"bundle": True} if "bundle" in fields else {}))
    return write(take(fields["bundle"], asked.bringer))
