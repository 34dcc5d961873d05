"""Plans for the set-up tests: made by the engine, with the body of every record at hand."""

from functools import cache

from planner.canonical import digest
from planner.codec import read, write
from planner.plans import Choice, plan
from planner.proposal import propose
from planner.records.patient import Patient
from planner.records.set_up import Override, Wishes
from planner.setup import set_up
from tests.planner.patients import case

ON = "2026-12-01"
ADULT, CHILD = "1990-05-06", "2020-05-06"
BOTH_EYES, ONE_EYE = "recess-both-mr", "recess-mr-resect-lr-right"
IDS = {"patient_id": "0190a0b0-0000-7000-8000-000000000001", "examination_id": "0190a0b0-0000-7000-8000-000000000002"}


def patient(born_on=ADULT, **rest):
    return read(
        Patient, {"schema": 1, "full_name": "Ana Example", "born_on": born_on, "hospital_number": "PP-0007"} | rest
    )


@cache
def planned(option=ONE_EYE, who=None, **examination):
    """A plan for an esotropia of 30 prism dioptres; made once, for it takes a while."""
    measured = case(30, born_on=(who or patient()).born_on, **examination)
    return plan(
        Choice(
            case=measured,
            option=option,
            **IDS,
            patient_digest=digest(write(who or patient())),
            examination_digest=digest(write(measured.examination)),
            note="",
        )
    )


def offered(**examination):
    return [each.id for each in propose(case(30, **examination)).options]


def sheet(option=ONE_EYE, *, born_on=ADULT, wishes=None, overrides=(), **rest):
    """The set-up sheet of such a plan.

    ``rest``: the clinic's ``practice``, the day ``on``, what else the patient's record says (``person``), its newer
    version (``now``), the person's ``others``, and the examination's.
    """
    practice, on = rest.pop("practice", None), rest.pop("on", ON)
    who = patient(born_on, **rest.pop("person", {}))
    now, others = rest.pop("now", None), rest.pop("others", ())
    examination = rest
    chosen = planned(option, who, **examination)
    return set_up(
        who,
        chosen,
        patient_digest=chosen.patient_digest,
        plan_digest=digest(write(chosen)),
        signature=None,
        on=on,
        wishes=read(Wishes, wishes or {}),
        overrides=tuple(read(Override, each) for each in overrides),
        practice=practice,
        patient_now=now,
        other_entries=tuple(others),
    )


def codes(said):
    return [each.code for each in said]
