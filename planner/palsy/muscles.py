"""The table of the three-step test: hyper, gaze and tilt in which it is worse, weak muscle."""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType

from planner.anatomy import Eye, Muscle
from planner.provenance import Mark, Provenance

PARKS = Provenance(
    mark=Mark.PUBLISHED,
    source="three-step test, Parks 1958: the row of the superior oblique, printed for one eye, mirrored for the other",
)
BY_THE_SAME_RULE = Provenance(mark=Mark.COMPUTED, source="from the muscle sets of the three-step test, Parks 1958")


@dataclass(frozen=True, kw_only=True)
class WeakMuscle:
    """A muscle of an eye that may be weak."""

    eye: Eye
    muscle: Muscle

    @property
    def words(self) -> str:
        """For example ``right superior oblique``."""
        return f"{self.eye.value} {self.muscle.words}"


_R, _L = Eye.RIGHT, Eye.LEFT

WEAK_MUSCLE = MappingProxyType(
    {
        (_R, _R, _R): WeakMuscle(eye=_L, muscle=Muscle.IO),
        (_R, _R, _L): WeakMuscle(eye=_R, muscle=Muscle.IR),
        (_R, _L, _R): WeakMuscle(eye=_R, muscle=Muscle.SO),
        (_R, _L, _L): WeakMuscle(eye=_L, muscle=Muscle.SR),
        (_L, _R, _R): WeakMuscle(eye=_R, muscle=Muscle.SR),
        (_L, _R, _L): WeakMuscle(eye=_L, muscle=Muscle.SO),
        (_L, _L, _R): WeakMuscle(eye=_L, muscle=Muscle.IR),
        (_L, _L, _L): WeakMuscle(eye=_R, muscle=Muscle.IO),
    }
)
"""Weak muscle by (eye that is higher, gaze in which it is worse, tilt on which it is worse)."""


def provenance_of(weak: WeakMuscle | None) -> Provenance:
    """The source of a row of the table."""
    return PARKS if weak is not None and weak.muscle is Muscle.SO else BY_THE_SAME_RULE
