"""Which obliques over- or underact, as far as it was graded."""

from __future__ import annotations

from planner.anatomy import Eye, Muscle
from planner.records.diagnosis import Diagnosis
from planner.situation import Situation


def grade(situation: Situation, eye: Eye, muscle: Muscle) -> int | None:
    """Overaction +, underaction -, None where it was not graded."""
    graded = (each.grade for each in situation.examination.versions if (each.eye, each.muscle) == (eye, muscle))
    return next(graded, None)


def overacts(situation: Situation, eye: Eye, muscle: Muscle) -> bool:
    """Whether the muscle was graded as overacting."""
    return (grade(situation, eye, muscle) or 0) > 0


def underacts(situation: Situation, eye: Eye, muscle: Muscle) -> bool:
    """Whether the muscle was graded as underacting."""
    return (grade(situation, eye, muscle) or 0) < 0


def has_diagnosis(situation: Situation, diagnosis: Diagnosis, eye: Eye) -> bool:
    """Whether it was diagnosed in that eye, or without saying in which."""
    return any(each.diagnosis is diagnosis and each.eye in (eye, None) for each in situation.examination.diagnoses)
