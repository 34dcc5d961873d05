"""Whether a body is a valid record body of its kind."""

from __future__ import annotations

from dataclasses import dataclass

from planner import setup, tables
from planner.codec import read, read_body
from planner.desk.fields import Fields
from planner.records.dose_table import DoseTable
from planner.records.practice import Practice


@dataclass(frozen=True, kw_only=True)
class Checking:
    """Which fields a check came with; what is in them is the record kind's business."""

    kind: bool
    body: bool


def ask(fields: Fields) -> object:
    """``{}``; else faults."""
    read(Checking, dict.fromkeys(fields, True))
    body = read_body(fields["kind"], fields["body"])
    if isinstance(body, DoseTable):
        tables.check_own(body)
    if isinstance(body, Practice):
        setup.check_practice(body)
    return {}
