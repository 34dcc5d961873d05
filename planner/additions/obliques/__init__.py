"""A vertical deviation answered by an oblique muscle.

``grading``         the inferior oblique weakened by the deviation in adduction
``transposition``   the inferior oblique by its place against the inferior rectus, alone or with a rectus
``superior``        superior oblique tuck or weakening, for which no dose is published
"""

from collections.abc import Iterator

from planner.additions.obliques import grading, superior, transposition
from planner.additions.part import Part
from planner.situation import Situation

__all__ = ["parts"]


def parts(situation: Situation) -> Iterator[Part]:
    """What the overacting and underacting obliques allow."""
    yield from grading.parts(situation)
    yield from transposition.parts(situation)
    yield from superior.parts(situation)
