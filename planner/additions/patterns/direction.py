"""Which way a tendon is moved: the medial rectus toward the apex of the letter, the lateral toward its open end.

The way is the same for a recession and a resection. The apex of a V points down, that of an A up.
"""

from __future__ import annotations

from planner.anatomy import Muscle
from planner.provenance import Mark, Provenance
from planner.values.option import OffsetDirection

FOR_V = Provenance(
    mark=Mark.PUBLISHED, source="Vaughan & Asbury: medial recti to the apex, lateral recti to the open end, V pattern"
)
FOR_A = Provenance(mark=Mark.FROM_MEMORY, source="medial recti to the apex, lateral recti to the open end, A pattern")


def direction(muscle: Muscle, *, opens_down: bool) -> OffsetDirection:
    """Where a horizontal rectus goes; ``opens_down`` for an A, else a V."""
    apex_up = opens_down
    to_apex = muscle is Muscle.MR
    return OffsetDirection.UP if apex_up is to_apex else OffsetDirection.DOWN


def provenance_of(*, opens_down: bool) -> Provenance:
    """The source of the way for an A or a V."""
    return FOR_A if opens_down else FOR_V
