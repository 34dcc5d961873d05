"""The muscles of a plan as lines of the card, in the order in which they are operated."""

from __future__ import annotations

from planner.anatomy import Eye
from planner.card.drawing import work_of
from planner.card.steps import details
from planner.card.words import eye_words
from planner.pictures import ruler
from planner.values.card import CardLine
from planner.values.option import Dose, Operation
from planner.values.sewing import Sewing

EYES = (Eye.RIGHT, Eye.LEFT)
"""House rule: the right eye always stands first, so that a list of lines is read the same way on every card."""

OPERATIONS = (
    Operation.RECESS,
    Operation.WEAKEN,
    Operation.ANTERIORISE,
    Operation.TRANSPOSE,
    Operation.HARADA_ITO,
    Operation.RESECT,
    Operation.TUCK,
)
"""Common practice: within an eye what weakens comes first, so that the tightened muscle is tied without its pull."""


def card_lines(doses: tuple[Dose, ...], sewing: Sewing | None = None) -> tuple[CardLine, ...]:
    """One line for each dose: right eye before left, what weakens before what tightens."""
    return tuple(_line(dose, sewing) for dose in in_operating_order(doses))


def in_operating_order(doses: tuple[Dose, ...]) -> tuple[Dose, ...]:
    """The doses as they are operated one after the other."""
    return tuple(sorted(doses, key=lambda dose: (EYES.index(dose.eye), OPERATIONS.index(dose.operation), dose.muscle)))


def _line(dose: Dose, sewing: Sewing | None) -> CardLine:
    found = details(dose, sewing)
    return CardLine(
        eye=dose.eye,
        eye_words=eye_words({dose.eye}),
        muscle=dose.muscle,
        muscle_words=dose.muscle.words,
        operation=dose.operation,
        operation_words=dose.operation.words,
        mm=dose.mm,
        table_mm=dose.table_mm,
        surgeon_changed=dose.changed,
        limbus_mm=dose.limbus_mm,
        insertion_mm=dose.insertion_mm,
        attachment_words=dose.attachment_words,
        offset_words=f"moved {dose.offset.words}" if dose.offset else "",
        caliper_mm=dose.caliper_mm,
        sutures=found.sutures,
        steps=found.steps,
        checks=found.checks,
        pitfalls=found.pitfalls,
        ruler=ruler(work_of(dose)),
    )
