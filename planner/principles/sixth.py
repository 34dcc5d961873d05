"""Sixth nerve palsy, or abduction that is gone for whatever reason: what is left of abduction decides.

not past the middle (-4)   no table: transposition of the vertical recti, release of a tight medial rectus
past the middle            a table may serve, with a caution: it was not made for palsies
not graded                 a caution that asks for the grade
"""

from __future__ import annotations

from planner.anatomy import Eye, Muscle
from planner.principles.diagnosed import TEACHING, code
from planner.principles.figures import THREE_RECTI
from planner.records.diagnosis import Diagnosed, Diagnosis
from planner.records.examination import Examination
from planner.values.option import Answers
from planner.values.principle import Principle
from planner.values.statement import Level

NO_FUNCTION = -4

WITHOUT = (
    "does not come past the middle on abduction: without function of the lateral rectus a recession and resection by a "
    "table must not be done. The vertical recti are transposed to it, and a medial rectus that is tight by forced "
    "duction is released first. No dose is published here."
)
WITH = (
    "still abducts past the middle: recession and resection of that eye, or a recession of the other eye's medial "
    "rectus, may serve; tables are not made for palsies. Wait until the angle has stayed the same for months."
)
UNKNOWN = (
    "has a sixth nerve palsy, and its abduction was not graded: grade it. If it does not come past the middle, tables "
    "must not be used."
)


def palsied(examination: Examination, diagnosed: Diagnosed) -> tuple[Principle, ...]:
    """What holds in a sixth nerve palsy; for each eye where the eye was not named."""
    eyes = (diagnosed.eye,) if diagnosed.eye else tuple(Eye)
    return tuple(_of_an_eye(examination, eye) for eye in eyes)


def missing(examination: Examination) -> tuple[Principle, ...]:
    """The same for an eye that nobody called palsied, and that does not abduct past the middle."""
    named = {each.eye for each in examination.diagnoses if each.diagnosis is Diagnosis.SIXTH_NERVE_PALSY}
    if None in named:
        return ()
    return tuple(_lost(eye) for eye in Eye if eye not in named and abduction(examination, eye) == NO_FUNCTION)


def abduction(examination: Examination, eye: Eye) -> int | None:
    """How far abduction falls short, None where it was not graded."""
    graded = (each.grade for each in examination.ductions if (each.eye, each.muscle) == (eye, Muscle.LR))
    return next(graded, None)


def _of_an_eye(examination: Examination, eye: Eye) -> Principle:
    grade = abduction(examination, eye)
    if grade is None:
        return _principle(eye, UNKNOWN, Level.CAUTION)
    if grade <= NO_FUNCTION:
        return _principle(eye, WITHOUT, Level.STOP)
    return _principle(eye, WITH, Level.CAUTION)


def _principle(eye: Eye, words: str, level: Level) -> Principle:
    return Principle(
        code=code(Diagnosis.SIXTH_NERVE_PALSY, eye),
        text=f"The {eye} eye {words}",
        provenance=TEACHING,
        facts={"eye": eye.value},
        topic=Diagnosis.SIXTH_NERVE_PALSY.value,
        eye=eye,
        level=level,
        concerns=(Answers.HORIZONTAL,),
        figures=(THREE_RECTI,) if level is Level.STOP else (),
    )


def _lost(eye: Eye) -> Principle:
    return Principle(
        code=f"principle-abduction_lost-{eye}",
        text=(f"The {eye} eye {WITHOUT} Find out by forced duction whether it is palsy or restriction."),
        provenance=TEACHING,
        facts={"eye": eye.value},
        topic="abduction lost",
        eye=eye,
        level=Level.STOP,
        concerns=(Answers.HORIZONTAL,),
        figures=(THREE_RECTI,),
    )
