"""What makes the result of an operation say something else than its dose."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator

from planner.anatomy import Eye, Muscle
from planner.calibration.admission import Confounder
from planner.followup.aftercare import Aftercare
from planner.operation.differences import AS_PLANNED, difference
from planner.records.case import Aim
from planner.records.diagnosis import Diagnosis
from planner.records.examination import PreviousOperation
from planner.records.motility import Pull
from planner.records.operation import MuscleState

HORIZONTAL = (Muscle.MR, Muscle.LR)
PALSY_OR_RESTRICTION = frozenset(
    {
        Diagnosis.THIRD_NERVE_PALSY,
        Diagnosis.FOURTH_NERVE_PALSY,
        Diagnosis.SIXTH_NERVE_PALSY,
        Diagnosis.PROGRESSIVE_EXTERNAL_OPHTHALMOPLEGIA,
        Diagnosis.INTERNUCLEAR_OPHTHALMOPLEGIA,
        Diagnosis.MYASTHENIA,
        Diagnosis.SKEW_DEVIATION,
        Diagnosis.THYROID_EYE_DISEASE,
        Diagnosis.ORBITAL_FRACTURE,
        Diagnosis.DUANE_SYNDROME,
        Diagnosis.BROWN_SYNDROME,
        Diagnosis.MOEBIUS_SYNDROME,
        Diagnosis.CONGENITAL_FIBROSIS,
        Diagnosis.MONOCULAR_ELEVATION_DEFICIENCY,
        Diagnosis.HIGH_MYOPIA,
    }
)


def confounders(care: Aftercare, days_after: int, reoperated_days: int | None) -> tuple[Confounder, ...]:
    """Those that hold at a follow-up so many days after the operation."""
    return tuple(_confounders(care, days_after, reoperated_days))


def _confounders(care: Aftercare, days_after: int, reoperated_days: int | None) -> Iterator[Confounder]:
    operation, examination = care.operation, care.plan.case.examination
    if reoperated_days is not None and reoperated_days <= days_after:
        yield Confounder.REOPERATION
    done = {(each.eye, each.muscle) for each in operation.muscles if each.done}
    if is_operated_before(examination.previous_operations, done):
        yield Confounder.EARLIER_OPERATION
    if care.adjustment is not None and care.adjustment.moved:
        yield Confounder.ADJUSTED
    if any(difference(muscle).code != AS_PLANNED for muscle in operation.muscles):
        yield Confounder.CHANGED_IN_THEATRE
    if operation.complications or any(each.state is not MuscleState.IN_PLACE for each in operation.muscles):
        yield Confounder.COMPLICATION
    if _is_palsy_or_restriction(care):
        yield Confounder.PALSY_OR_RESTRICTION
    if care.plan.case.aim is Aim.NEAR:
        yield Confounder.AIMED_AT_NEAR


def is_operated_before(earlier: Iterable[PreviousOperation], now: Collection[tuple[Eye, Muscle]]) -> bool:
    """A horizontal rectus of either eye, for what was done to it is part of the deviation; or a muscle of ``now``."""
    return any(each.muscle in HORIZONTAL or (each.eye, each.muscle) in now for each in earlier)


def _is_palsy_or_restriction(care: Aftercare) -> bool:
    examination = care.plan.case.examination
    return (
        any(each.diagnosis in PALSY_OR_RESTRICTION for each in examination.diagnoses)
        or any(each.result is Pull.RESTRICTED for each in examination.forced_ductions)
        or any(each.duction_before is Pull.RESTRICTED for each in care.operation.muscles)
    )
