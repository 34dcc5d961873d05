"""Places on the patient's face and where they lie in a picture.

A place is ``(across, down)`` in mm from the bridge of the nose: across towards the patient's left, down towards the
feet. Facing the patient, the patient's left lies at the viewer's right and the feet are down: the same axes. Who sits
at the head of the table looks at the same front of the same face, turned by half a turn: the head is near, at the foot
of the picture, and the patient's right eye lies at the surgeon's right hand. Neither is a mirror image of the other.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.precision.steady import steady
from planner.values.picture import Anchor, View

Place = tuple[float, float]

WIDTH_MM: Final = 136.0
HEIGHT_MM: Final = 79.0
MIDDLE: Final = (68.0, 38.0)
"""Where the bridge of the nose lies in the picture."""


@dataclass(frozen=True)
class Frame:
    """A view of the face."""

    view: View

    @property
    def turn(self) -> int:
        """+1 upright, -1 turned by half a turn."""
        return -1 if self.view is View.FROM_THE_HEAD else 1

    def point(self, place: Place) -> Place:
        """Where ``place`` lies in the picture, to 0.01 mm on every device."""
        across, down = place
        return steady(MIDDLE[0] + self.turn * across, 2), steady(MIDDLE[1] + self.turn * down, 2)

    def points(self, *places: Place) -> tuple[Place, ...]:
        """The same of several."""
        return tuple(self.point(place) for place in places)

    def anchor(self, towards: float) -> Anchor:
        """The end of a text that reaches from its place in the direction of ``towards``, across the face."""
        way = towards * self.turn
        if way == 0:
            return Anchor.MIDDLE
        return Anchor.START if way > 0 else Anchor.END
