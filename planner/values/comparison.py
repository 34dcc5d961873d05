"""How a drawing and a plan differ."""

from __future__ import annotations

from dataclasses import dataclass

from planner.records.plan import DrawnMuscle


@dataclass(frozen=True, kw_only=True)
class Comparison:
    """``missing`` is planned and not drawn, ``unexpected`` is drawn and not planned.

    A muscle drawn with the other operation stands in both. Nothing in either means ``equal``.
    """

    equal: bool
    missing: tuple[DrawnMuscle, ...]
    unexpected: tuple[DrawnMuscle, ...]
