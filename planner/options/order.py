"""The order of the options: a list of plain questions, no hidden score, the same for right and left."""

from __future__ import annotations

from planner.provenance import Mark, Provenance
from planner.values.option import Option
from planner.values.statement import Level, Notice

HOUSE = Provenance(mark=Mark.HOUSE_RULE, source="an order to start from, not a recommendation")

EXPLANATION = Notice(
    code="order_of_options",
    text=(
        "The options stand in this order: without a stop first; then those with fewer cautions; then those with more "
        "reasons for than against; then fewer muscles; then the expected result nearer to what is wanted; then by name."
    ),
    provenance=HOUSE,
    facts={},
    level=Level.NOTE,
)


def in_order(options: list[Option], intended_pd: float) -> tuple[Option, ...]:
    """The options, best first; ``intended_pd`` is what is meant to be there early after surgery, eso +."""
    return tuple(sorted(options, key=lambda option: (*rank(option, intended_pd), option.id)))


def rank(option: Option, intended_pd: float = 0.0) -> tuple[bool, int, int, int, float]:
    """What the order goes by; ``order_of_options`` says it in words."""
    levels = [notice.level for notice in option.notices]
    return (
        Level.STOP in levels,
        levels.count(Level.CAUTION),
        len(option.reasons_against) - len(option.reasons_for),
        len(option.doses),
        round(abs(option.expected_residual_pd - intended_pd), 1),
    )
