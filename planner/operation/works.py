"""What is done to a muscle, in words and as the plan says it."""

from __future__ import annotations

from planner.anatomy import Eye, Muscle
from planner.figures import mm
from planner.records.operation import MuscleWork, OperatedMuscle
from planner.values.option import Dose


def planned_work(dose: Dose) -> MuscleWork:
    """A dose of the plan as work."""
    return MuscleWork(operation=dose.operation, mm=dose.mm, offset=dose.offset.direction if dose.offset else None)


def work_words(work: MuscleWork) -> str:
    """``recession of 5.5 mm, tendon moved up``."""
    figure = "" if work.mm is None else f" of {mm(work.mm)}"
    moved = f", tendon moved {work.offset}" if work.offset else ""
    return f"{work.operation.noun}{figure}{moved}"


def a_work(work: MuscleWork) -> str:
    """``a recession of 5.5 mm``, ``an anterior transposition``."""
    words = work_words(work)
    return f"{'an' if words[0] in 'aeiou' else 'a'} {words}"


def place_words(eye: Eye, muscle: Muscle) -> str:
    """``Right eye, medial rectus``."""
    return f"{eye.capitalize()} eye, {muscle.words}"


def where(muscle: OperatedMuscle) -> str:
    """The muscle, to begin a sentence with."""
    return place_words(muscle.eye, muscle.muscle)


def tag(muscle: OperatedMuscle) -> str:
    """The eye and the muscle, to end a notice's code with."""
    return f"{muscle.eye}-{muscle.muscle.lower()}"
