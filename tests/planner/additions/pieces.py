"""Small patients with something beside the horizontal deviation."""

from planner.anatomy import Eye, Muscle
from planner.proposal import propose
from planner.records.diagnosis import Diagnosed, Diagnosis
from planner.records.motility import Duction, ForcedDuction, Pull, Version
from tests.planner.patients import case


def graded(eye, muscle, grade):
    return Version(eye=Eye(eye), muscle=Muscle(muscle), grade=grade)


def duction(eye, muscle, grade):
    return Duction(eye=Eye(eye), muscle=Muscle(muscle), grade=grade)


def restricted(eye, muscle):
    return ForcedDuction(eye=Eye(eye), muscle=Muscle(muscle), result=Pull.RESTRICTED)


def diagnosed(diagnosis, eye=None):
    return Diagnosed(diagnosis=Diagnosis(diagnosis), eye=Eye(eye) if eye else None)


def additions(horizontal_pd, *others, **rest):
    """The additions by id."""
    return {option.id: option for option in propose(case(horizontal_pd, *others, **rest)).additions}


def work(option):
    """What is done to which muscle, with its millimetres or None."""
    return {(dose.eye.value, dose.muscle.value, dose.operation.value): dose.mm for dose in option.doses}


def levels(option):
    return {notice.code: notice.level.value for notice in option.notices}
