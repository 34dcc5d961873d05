"""What can be asked at the desk: a module per question, named like it, with ``ask(fields)``.

A module reads its fields by the codec into a dataclass of its own, which refuses what is wrong or too much, and answers
with what :func:`planner.codec.write` makes. ReportLab is imported inside the question that draws.
"""

from __future__ import annotations

from collections.abc import Callable

from planner.desk.asks import (
    about,
    card,
    card_pdf,
    check,
    compare_drawing,
    draft_plan,
    propose,
    read_table,
    self_test,
    sign,
)
from planner.desk.fields import Fields

ASKS: dict[str, Callable[[Fields], object]] = {
    "about": about.ask,
    "check": check.ask,
    "read_table": read_table.ask,
    "propose": propose.ask,
    "draft_plan": draft_plan.ask,
    "compare_drawing": compare_drawing.ask,
    "sign": sign.ask,
    "card": card.ask,
    "card_pdf": card_pdf.ask,
    "self_test": self_test.ask,
}
