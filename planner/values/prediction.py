"""Where the eyes are expected to be after an operation."""

from __future__ import annotations

from dataclasses import dataclass

from planner.records.examination import Gaze, Range
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Residual:
    """What is expected to remain of a deviation: mean and 95 % interval in Δ (eso +), chances in per cent, all to 0.1.

    The three chances add to 100. Undercorrected: what remains exceeds ``within_pd`` in the direction that was operated
    for; overcorrected: in the other.
    """

    mean_pd: float
    sd_pd: float
    low_pd: float
    high_pd: float
    within_pd: float
    within_percent: float
    undercorrected_percent: float
    overcorrected_percent: float


@dataclass(frozen=True, kw_only=True)
class Outcome(Residual):
    """The horizontal residual in one measured position, ``before_pd`` being the deviation there before surgery."""

    gaze: Gaze
    range: Range
    before_pd: float


@dataclass(frozen=True, kw_only=True)
class Prediction:
    """The horizontal deviation after an operation, wherever it was measured as the target was.

    ``distance`` and ``near`` are the primary position, null where it was not measured so; ``gazes`` stand in the order
    of the readings. ``spread`` says whether the scatter of the effect was published for this operation or borrowed;
    ``steps`` lead from the errors of the readings to the chances, for all positions together, assumptions included.
    """

    distance: Outcome | None
    near: Outcome | None
    gazes: tuple[Outcome, ...]
    spread: Statement
    steps: tuple[Statement, ...]
