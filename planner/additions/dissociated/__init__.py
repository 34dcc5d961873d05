"""Dissociated vertical deviation: an eye that drifts up when it is covered.

``telling``     dissociated, true, both, or not to be told apart
``recession``   superior recti at 1.82 Δ/mm
``oblique``     anterior transposition where the inferior obliques overact too
"""

from collections.abc import Iterator

from planner.additions.dissociated import oblique, recession
from planner.additions.part import Part
from planner.situation import Situation

__all__ = ["parts"]


def parts(situation: Situation) -> Iterator[Part]:
    """What may be done about a drift that was measured."""
    yield from recession.parts(situation)
    yield from oblique.parts(situation)
