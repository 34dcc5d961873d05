"""What is to be shown on one muscle."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.values.option import OffsetDirection, Operation


@dataclass(frozen=True, kw_only=True)
class Work:
    """An operation on a muscle; distances are arcs from the limbus, null where the operation has none."""

    eye: Eye
    muscle: Muscle
    operation: Operation
    mm: float | None = None
    insertion_mm: float | None = None
    limbus_mm: float | None = None
    offset: OffsetDirection | None = None

    @property
    def spoken(self) -> str:
        """``RIGHT eye, medial rectus: recess 5.5 mm``."""
        amount = "" if self.mm is None else f" {self.mm:g} mm"
        moved = f", moved {self.offset}" if self.offset else ""
        return f"{self.eye.upper()} eye, {self.muscle.words}: {self.operation}{amount}{moved}"
