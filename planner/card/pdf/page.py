"""The page as a whole: what stands above, what stands at the foot, and the size at which both fit."""

from __future__ import annotations

from planner.card.pdf.faces import lacks
from planner.card.pdf.ink import Block, Mark, stack
from planner.card.pdf.scale import ACROSS, DEEP, LEFT, MARGIN, SCALES, Scale
from planner.card.pdf.sections.alerts import alerts
from planner.card.pdf.sections.heading import heading
from planner.card.pdf.sections.identity import identity
from planner.card.pdf.sections.muscles import muscles
from planner.card.pdf.sections.notices import notices
from planner.card.pdf.sections.pictures import pictures
from planner.card.pdf.sections.seal import seal
from planner.card.pdf.sections.steps import steps
from planner.card.pdf.sections.surgeons_note import surgeons_note
from planner.errors import Fault, Refused
from planner.values.card import Card

BODY = (identity, alerts, heading, muscles, pictures, notices, surgeons_note, steps)
FOOT = (seal,)

ROUNDING = 0.01
"""Points by which a sum of widths may miss the margin."""


def page(card: Card) -> tuple[Mark, ...]:
    """The marks of the one page at the roomiest scale that holds everything.

    :class:`Refused` with ``card_too_long`` where even the tightest does not, and with ``card_unreadable`` where the
    typeface can show neither the name nor the hospital number. Only the surgeon's note is ever continued elsewhere.
    """
    _refuse_unreadable(card)
    for scale in SCALES:
        body, foot = _set(card, scale)
        if _fits(body, foot, scale):
            return body.moved(MARGIN).marks + foot.moved(MARGIN + DEEP - foot.height).marks
    raise Refused(
        Fault(
            code="card_too_long",
            text="The cautions and allergies do not fit on one page, and neither is ever cut. Use the screen.",
            field="plan.option.notices",
            value=f"{len(card.notices)} notices",
        )
    )


def _set(card: Card, scale: Scale) -> tuple[Block, Block]:
    body = stack((section(card, scale) for section in BODY), gap=scale.gap)
    return body, stack((section(card, scale) for section in FOOT), gap=scale.gap * 0.5)


def _fits(body: Block, foot: Block, scale: Scale) -> bool:
    deep_enough = body.height + scale.gap + foot.height <= DEEP
    return deep_enough and all(mark.right <= LEFT + ACROSS + ROUNDING for mark in body.marks + foot.marks)


def _refuse_unreadable(card: Card) -> None:
    if all(lacks(words) for words in (card.full_name, card.hospital_number)):
        raise Refused(
            Fault(
                code="card_unreadable",
                text="The paper card can show neither the name nor the hospital number in full. Use the screen.",
                field="patient.hospital_number",
                allowed="a name or a number in Latin, Greek or Cyrillic letters",
            )
        )
