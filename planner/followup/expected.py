"""What the signed plan expected of the primary position."""

from __future__ import annotations

from planner.precision.limits import Direction, limits_of
from planner.prediction import Expectation, predict
from planner.records.case import Aim
from planner.records.examination import Range
from planner.records.plan import Plan
from planner.values.follow_up import Band
from planner.values.option import Answers, Unit


def expected(plan: Plan, direction: Direction, at: Range) -> Band | None:
    """The expectation of the primary position at a range; None where the plan tells none."""
    if direction is Direction.VERTICAL:
        return _expected_vertical(plan, at)
    prediction = plan.option.prediction
    outcome = prediction and (prediction.distance if at is Range.DISTANCE else prediction.near)
    if not outcome:
        return None
    return Band(mean_pd=outcome.mean_pd, low_pd=outcome.low_pd, high_pd=outcome.high_pd)


def _expected_vertical(plan: Plan, at: Range) -> Band | None:
    """At the range that the plan aimed at; None where the option tells no figure of it."""
    aimed = Range.NEAR if plan.case.aim is Aim.NEAR else Range.DISTANCE
    vertical = [
        each
        for each in plan.option.expected
        if each.answers is Answers.VERTICAL and each.unit is Unit.PRISM_DIOPTRES and each.correction is not None
    ]
    if at is not aimed or not vertical:
        return None
    told = vertical[0]
    residual = predict(
        Expectation(
            reading_pd=told.before,
            limits=limits_of(told.before, at, direction=Direction.VERTICAL),
            correction_pd=told.correction or 0.0,
            spread_pd=told.spread,
        )
    )
    return Band(mean_pd=residual.mean_pd, low_pd=residual.low_pd, high_pd=residual.high_pd)
