"""A followed operation as the audit and the calibration read it.

Both count the horizontal deviation at distance, eso +, against the signed plan's expectation there; an operation whose
plan tells none gives nothing. The sides are not told apart: the same option on either eye is one family.

A plan that answers the deviation at near teaches nothing. Of it distance is promised the same correction, often more
than there is, which no table claims; and counted at near it would be another figure than its family's, for near moves
with accommodation as distance does not.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from planner.calibration.admission import PastCase, Window
from planner.direction import direction_of
from planner.followup.aftercare import Aftercare, Visited
from planner.followup.confounders import confounders
from planner.precision.limits import Direction
from planner.precision.steady import steady
from planner.records.examination import Range
from planner.records.plan import RecordId
from planner.results.result import Days, Result, Seen
from planner.thresholds import reaches, same
from planner.values.prediction import Outcome as Expected

LEAST_PROMISED_PD = 1.0
LONGEST_DIAGNOSIS = 120


@dataclass(frozen=True, kw_only=True)
class Reported:
    """An operation by the id of its record; ``reoperated_days`` is null where nobody operated again."""

    id: RecordId
    care: Aftercare
    reoperated_days: Days | None = None


@dataclass(frozen=True, kw_only=True)
class Outcome:
    """``result`` is null where the plan tells no horizontal deviation at distance, ``past_case`` also if unmeasured."""

    id: str
    family: str
    result: Result | None
    past_case: PastCase | None


def outcome(reported: Reported, window: Window) -> Outcome:
    """What the operation is to the audit, and to the calibration of its family."""
    return Outcome(
        id=reported.id,
        family=family(reported.care),
        result=result(reported),
        past_case=past_case(reported, window),
    )


def result(reported: Reported) -> Result | None:
    """The operation with every visit at which the deviation at distance was measured."""
    expected, care = _expected(reported.care), reported.care
    if expected is None:
        return None
    return Result(
        id=reported.id,
        operated_on=care.operation.operated_on,
        surgeon=care.operation.surgeon_name,
        family=family(care),
        table=(care.plan.option.table or care.plan.table).id,
        diagnosis=_diagnosis(care, expected),
        before_pd=expected.before_pd,
        expected_pd=expected.mean_pd,
        constancy=care.plan.case.examination.constancy,
        seen=tuple(_seen(care)),
        reoperated_days=reported.reoperated_days,
    )


def past_case(reported: Reported, window: Window) -> PastCase | None:
    """What the operation teaches: its last measured visit in the window, else the last there is, with confounders."""
    expected, seen = _expected(reported.care), list(_seen(reported.care))
    if expected is None:
        return None
    toward = direction_of(expected.before_pd).sign
    promised_pd = steady(toward * (expected.before_pd - expected.mean_pd), 1)
    if not reaches(promised_pd, LEAST_PROMISED_PD):
        return None
    last = counted(seen, window)
    if last is None:
        return None
    return PastCase(
        id=reported.id,
        promised_pd=promised_pd,
        achieved_pd=steady(toward * (expected.before_pd - last.distance_pd), 1),
        days_after=last.days_after,
        confounders=confounders(reported.care, last.days_after, reported.reoperated_days),
    )


def counted(seen: Sequence[Seen], window: Window) -> Seen | None:
    """The visit that teaches: the last in the window, else the last there is; ``seen`` is in order."""
    inside = [each for each in seen if window.first_days <= each.days_after <= window.last_days]
    return (inside or [*seen])[-1] if seen else None


def family(care: Aftercare) -> str:
    """The option without its side."""
    return care.plan.option.id.removesuffix("-right").removesuffix("-left")


def _expected(care: Aftercare) -> Expected | None:
    prediction = care.plan.option.prediction
    if prediction is None or prediction.distance is None or same(prediction.distance.before_pd, 0.0):
        return None
    return prediction.distance


def _seen(care: Aftercare) -> Iterator[Seen]:
    """In the order of the days; with the plan's correction alone, and none from before the operation."""
    for visited in care.visits:
        distance_pd = _alike(care, visited, Range.DISTANCE)
        examination = visited.alignment.examination
        if distance_pd is not None and examination is not None and visited.days_after >= 0:
            yield Seen(
                days_after=visited.days_after,
                distance_pd=distance_pd,
                near_pd=_alike(care, visited, Range.NEAR),
                constancy=examination.constancy,
                stereo_octaves_lost=visited.follow_up.stereo_octaves_lost,
                stereo_lost_to_nil=visited.follow_up.stereo_lost_to_nil or None,
            )


def _alike(care: Aftercare, visited: Visited, at: Range) -> float | None:
    figure = visited.alignment.figure(Direction.HORIZONTAL, at)
    if figure is None or figure.reading.correction is not care.before.correction:
        return None
    return steady(figure.value_pd, 1)


def _diagnosis(care: Aftercare, expected: Expected) -> str:
    """The diagnoses by name, else the direction of the deviation."""
    named = ", ".join(sorted({each.diagnosis.value for each in care.plan.case.examination.diagnoses}))
    if len(named) > LONGEST_DIAGNOSIS:
        return "several diagnoses"
    return named or direction_of(expected.before_pd).words
