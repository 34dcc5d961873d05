"""A and V patterns: the obliques if they overact, otherwise tendons of horizontal recti moved up or down.

``letter``      the pattern as the families of operations read it: which oblique drives it, where its apex is
``direction``   which way a tendon is moved
``offsets``     half or full tendon width, both eyes or one eye
``collapse``    what an offset is expected to take from the pattern, where that was published
``inferior``    inferior obliques weakened, V
``superior``    superior obliques weakened, A
"""

from collections.abc import Iterator

from planner.additions.part import Part
from planner.additions.patterns import inferior, offsets, superior
from planner.additions.patterns.letter import letter
from planner.situation import Situation

__all__ = ["parts"]


def parts(situation: Situation) -> Iterator[Part]:
    """What answers the pattern, if there is one."""
    found = letter(situation)
    if found is None:
        return
    if found.overacting:
        yield from inferior.parts(situation, found)
        yield from superior.parts(situation, found)
    else:
        yield from offsets.parts(situation, found)
