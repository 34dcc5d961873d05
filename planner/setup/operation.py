"""What is operated, in words as short as a list needs them."""

from __future__ import annotations

from planner.card.lines import EYES, OPERATIONS
from planner.card.words import eye_words, mm_words
from planner.values.option import Dose


def operation_words(doses: tuple[Dose, ...]) -> tuple[str, ...]:
    """``RIGHT EYE medial rectus recess 5.5 mm``, right eye first, what weakens before what tightens."""
    in_order = sorted(doses, key=lambda dose: (EYES.index(dose.eye), OPERATIONS.index(dose.operation), dose.muscle))
    return tuple(map(_words, in_order))


def _words(dose: Dose) -> str:
    figure = "" if dose.mm is None else mm_words(dose.mm)
    offset = f"moved {dose.offset.words}" if dose.offset else ""
    where = ", ".join(words for words in (offset, dose.attachment_words) if words)
    said = " ".join(
        words for words in (eye_words({dose.eye}), dose.muscle.words, dose.operation.words, figure) if words
    )
    return f"{said}: {where}" if where else said
