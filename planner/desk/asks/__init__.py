"""What can be asked at the desk: a module per question, named like it, with ``ask(fields)``.

A module reads its fields by the codec into a dataclass of its own, which refuses what is wrong or too much, and answers
with what :func:`planner.codec.write` makes. ReportLab is imported inside the question that draws.
"""

from __future__ import annotations

from collections.abc import Callable

from planner.desk.asks import (
    about,
    calibrate,
    card,
    card_code,
    card_pdf,
    check,
    close_check,
    compare_drawing,
    course,
    day_list,
    day_list_pdf,
    draft_operation,
    draft_plan,
    entered_twice,
    follow_check,
    operation_note,
    operation_note_pdf,
    outcomes,
    packing,
    packing_pdf,
    practice_form,
    previous_operations,
    propose,
    read_card_code,
    read_table,
    results,
    review_adjustment,
    review_operation,
    self_test,
    set_up,
    set_up_pdf,
    sign,
    suggest,
    visits_due,
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
    "card_code": card_code.ask,
    "read_card_code": read_card_code.ask,
    "follow_check": follow_check.ask,
    "close_check": close_check.ask,
    "set_up": set_up.ask,
    "set_up_pdf": set_up_pdf.ask,
    "practice_form": practice_form.ask,
    "day_list": day_list.ask,
    "day_list_pdf": day_list_pdf.ask,
    "packing": packing.ask,
    "packing_pdf": packing_pdf.ask,
    "draft_operation": draft_operation.ask,
    "review_operation": review_operation.ask,
    "operation_note": operation_note.ask,
    "operation_note_pdf": operation_note_pdf.ask,
    "review_adjustment": review_adjustment.ask,
    "previous_operations": previous_operations.ask,
    "outcomes": outcomes.ask,
    "calibrate": calibrate.ask,
    "results": results.ask,
    "entered_twice": entered_twice.ask,
    "course": course.ask,
    "visits_due": visits_due.ask,
    "suggest": suggest.ask,
    "self_test": self_test.ask,
}
