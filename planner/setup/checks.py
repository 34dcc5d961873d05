"""What a clinic's practice may hold: choices that exist and are never refused, figures within limits, days in order."""

from __future__ import annotations

from collections.abc import Iterator

from planner.errors import Fault, Refused
from planner.records.practice import FigureName, OwnChoice, OwnFigure, Practice
from planner.setup.figures import DEFINITIONS, figures
from planner.setup.register import BY_ITEM
from planner.setup.visits import misplaced

PAIRS = (
    (FigureName.LOUPE_FROM_CM, FigureName.LOUPE_TO_CM),
    (FigureName.SUTURE_WEAK_FROM_WEEKS, FigureName.SUTURE_WEAK_TO_WEEKS),
)
"""The first of each is not above the second."""


def check_practice(practice: Practice) -> None:
    """:class:`Refused` with ``choice_unknown``, a stop's own code, or one of the figures and days.

    Those are ``out_of_range``, ``not_in_order`` and ``visit_ends_first``.
    """
    found = [
        *(fault for number, own in enumerate(practice.choices) for fault in _choice(number, own)),
        *(fault for number, own in enumerate(practice.figures) for fault in _figure(number, own)),
        *_order(practice),
        *misplaced(practice.visits or (), "visits"),
    ]
    if found:
        raise Refused(*found)


def _choice(number: int, own: OwnChoice) -> Iterator[Fault]:
    if own.choice is None:
        return
    field = f"choices.{number}.choice"
    rules = BY_ITEM[own.item]
    way = next((way for way in rules.ways if way.id == own.choice), None)
    if way is None:
        allowed = ", ".join(each.id for each in rules.ways if not each.never)
        text = f"{rules.title}: there is no such choice."
        yield Fault(code="choice_unknown", text=text, field=field, value=own.choice, allowed=allowed)
    elif way.never:
        yield Fault(code=f"never_{way.id}", text=way.never, field=field, value=own.choice)


def _figure(number: int, own: OwnFigure) -> Iterator[Fault]:
    definition = DEFINITIONS[own.name]
    limit = definition.within
    if not limit.low <= own.value <= limit.high:
        yield Fault(
            code="out_of_range",
            text=f"{definition.words}: this figure is outside what can be set.",
            field=f"figures.{number}.value",
            value=str(own.value),
            allowed=f"{limit.low:g} to {limit.high:g} {limit.unit}",
        )


def _order(practice: Practice) -> Iterator[Fault]:
    standing = figures(practice)
    for low, high in PAIRS:
        if standing[low] > standing[high]:
            yield Fault(
                code="not_in_order",
                text=f"{DEFINITIONS[low].words} {standing[low]}, {DEFINITIONS[high].words.lower()} {standing[high]}.",
                field="figures",
                allowed=f"{low} not above {high}",
            )
