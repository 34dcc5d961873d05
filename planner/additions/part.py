"""One operation beside the horizontal one, before it is judged."""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.option import Answers, Dose, Expected, Family
from planner.values.statement import Notice, Statement
from planner.values.table_stamp import TableStamp


@dataclass(frozen=True, kw_only=True)
class Part:
    """What an option is made of; ``table`` is what doses it, ``notices`` are those that its own family has to say."""

    id: str
    family: Family
    answers: Answers
    title: str
    table: TableStamp
    doses: tuple[Dose, ...]
    expected: tuple[Expected, ...]
    reasons_for: tuple[Statement, ...] = ()
    reasons_against: tuple[Statement, ...] = ()
    notices: tuple[Notice, ...] = ()
