"""What a clinic can make its own of theatre's common practice."""

from __future__ import annotations

from dataclasses import dataclass

from planner import setup
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.practice import Practice


@dataclass(frozen=True, kw_only=True)
class Standing:
    """What the clinic made its own so far."""

    practice: Practice | None = None


def ask(fields: Fields) -> object:
    """``PracticeForm``."""
    return write(setup.form(read(Standing, fields).practice))
