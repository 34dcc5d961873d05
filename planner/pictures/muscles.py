"""How the muscles of an eye run, in the picture's flat unrolling of the eye."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, Eye, Muscle
from planner.pictures.frame import Place
from planner.provenance import Mark, Provenance

CORNEA_MM: Final = 6.0
"""Half the width of a cornea, along the eye."""
CORNEA_SOURCE: Final = Provenance(mark=Mark.COMMON_PRACTICE, source="a cornea of 12 mm across")

FROM_NOSE_MM: Final = 32.0
"""From the bridge of the nose to the middle of each eye in the picture; nearer than in life."""

REACH_MM: Final = 29.0
"""How far a rectus is drawn from the middle of the cornea; nearly what the widest recession needs."""

HALF_WIDTH_MM: Final = 4.6
"""Half an insertion, a little narrower than in life so that four fit around an eye."""

TOWARDS: Final = {Muscle.MR: (1.0, 0.0), Muscle.LR: (-1.0, 0.0), Muscle.SR: (0.0, -1.0), Muscle.IR: (0.0, 1.0)}
"""Which way a rectus runs back, as (towards the nose, down)."""

OBLIQUES: Final = {
    Muscle.SO: ((-6.0, -14.5), (19.0, -20.5)),
    Muscle.IO: ((-13.0, 10.5), (18.0, 19.0)),
}
"""From the middle of the insertion to where it comes from, as (towards the nose, down): the pulley, and the floor."""


def nasal(eye: Eye) -> int:
    """+1 where the nose lies towards the patient's left."""
    return 1 if eye is Eye.RIGHT else -1


def middle(eye: Eye) -> Place:
    """The middle of the cornea."""
    return -nasal(eye) * FROM_NOSE_MM, 0.0


@dataclass(frozen=True)
class Run:
    """A muscle of an eye as a straight band: ``start`` is the middle of its insertion, ``way`` points back along it."""

    eye: Eye
    muscle: Muscle
    start: Place
    way: Place
    length_mm: float

    def at(self, along: float, aside: float = 0.0) -> Place:
        """So far back from the insertion and so far to the side of the middle line, alike on both eyes."""
        x, y = self.start
        back_x, back_y = self.way
        aside *= nasal(self.eye)
        return x + back_x * along - back_y * aside, y + back_y * along + back_x * aside

    def half(self, along: float) -> float:
        """Half the width there: a band narrows backwards."""
        return HALF_WIDTH_MM - 1.6 * max(0.0, along) / self.length_mm


def run(eye: Eye, muscle: Muscle) -> Run:
    """How the muscle runs."""
    x, y = middle(eye)
    side = nasal(eye)
    if muscle.is_rectus:
        nose, down = TOWARDS[muscle]
        from_middle = CORNEA_MM + INSERTION_FROM_LIMBUS_MM[muscle]
        way = (side * nose, down)
        start = (x + way[0] * from_middle, y + way[1] * from_middle)
        return Run(eye, muscle, start, way, REACH_MM - from_middle)
    (nose, down), (origin_nose, origin_down) = OBLIQUES[muscle]
    back_x, back_y = side * (origin_nose - nose), origin_down - down
    length = (back_x * back_x + back_y * back_y) ** 0.5
    return Run(eye, muscle, (x + side * nose, y + down), (back_x / length, back_y / length), length)
