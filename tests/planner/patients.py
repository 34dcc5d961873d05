"""Small patients for the tests: a case from a distance angle and what else matters."""

from planner.anatomy import Eye, Muscle
from planner.proposal import propose
from planner.records.case import Aim, Case, Change
from planner.records.examination import (
    Acuity,
    Constancy,
    Correction,
    Examination,
    FixingEye,
    Gaze,
    PastOperation,
    PreviousOperation,
    Range,
    Reading,
)

WORDS = {"fixing_eye": FixingEye, "acuity_right": Acuity, "acuity_left": Acuity, "constancy": Constancy}
WANTED = ("aim", "overcorrection_pd", "clinic_table")


def reading(horizontal_pd=None, vertical_pd=None, gaze="primary", at="distance", correction="with"):
    return Reading(
        gaze=Gaze(gaze),
        range=Range(at),
        correction=Correction(correction),
        horizontal_pd=horizontal_pd,
        vertical_pd=vertical_pd,
    )


def case(horizontal_pd, *others, table="wright-after-parks", changes=(), vertical_pd=None, born_on=None, **examination):
    """``correction`` is that of the target; acuities and the fixing eye are given as the words of the record.

    What else a case has is given by its name, everything else is the examination's.
    """
    wanted = {name: examination.pop(name) for name in WANTED if name in examination}
    wanted |= {"aim": Aim(wanted["aim"])} if "aim" in wanted else {}
    words = {name: kind(examination.pop(name)) for name, kind in WORDS.items() if examination.get(name)}
    target = reading(horizontal_pd, vertical_pd, correction=examination.pop("correction", "with"))
    examined = Examination(examined_on="2026-11-02", readings=(target, *others), **words, **examination)
    return Case(examination=examined, table=table, changes=tuple(changes), born_on=born_on, **wanted)


def change(option, eye, muscle, mm):
    return Change(option=option, eye=Eye(eye), muscle=Muscle(muscle), mm=mm)


def before(eye, muscle, operation="recess", mm=None, year=None):
    done = PastOperation(operation)
    return PreviousOperation(eye=Eye(eye), muscle=Muscle(muscle), operation=done, mm=mm, year=year)


def options(horizontal_pd, *others, **rest):
    """The options by id."""
    return {option.id: option for option in propose(case(horizontal_pd, *others, **rest)).options}


def doses(option):
    return {(dose.eye.value, dose.muscle.value, dose.operation.value): dose.mm for dose in option.doses}


def codes(said):
    return [each.code for each in said]
