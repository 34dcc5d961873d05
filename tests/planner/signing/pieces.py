"""A plan put together by hand, so that signing is tested without the engine's options."""

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, Eye, Muscle
from planner.canonical import digest
from planner.codec import write
from planner.provenance import Mark, Provenance
from planner.records.case import Case
from planner.records.examination import Correction, Examination, Gaze, Range, Reading
from planner.records.patient import Patient, Sex
from planner.records.plan import DrawnMuscle, Plan
from planner.signing import Attestation
from planner.values.option import Dose, Family, Operation, Option
from planner.values.statement import Level, Notice
from planner.values.table_stamp import TableStamp

PROVENANCE = Provenance(mark=Mark.PUBLISHED, source="a textbook")

PATIENT = Patient(
    full_name="Amina Sørensen", born_on="2021-03-14", hospital_number="KV-20417", sex=Sex.FEMALE, allergies="latex"
)


def dose(eye, muscle, operation, mm, *, table_mm=None):
    insertion = INSERTION_FROM_LIMBUS_MM[muscle]
    return Dose(
        eye=eye,
        muscle=muscle,
        operation=operation,
        mm=mm,
        table_mm=mm if table_mm is None else table_mm,
        changed=table_mm is not None,
        insertion_mm=insertion,
        limbus_mm=insertion + mm if operation is Operation.RECESS else insertion,
        steps=(),
    )


def notice(code, level):
    return Notice(code=code, text=f"About {code}.", provenance=PROVENANCE, facts={}, level=level)


RIGHT_MR = dose(Eye.RIGHT, Muscle.MR, Operation.RECESS, 5.5)
LEFT_MR = dose(Eye.LEFT, Muscle.MR, Operation.RECESS, 5.0, table_mm=5.5)
RIGHT_LR = dose(Eye.RIGHT, Muscle.LR, Operation.RESECT, 6.5)


def option(*doses, notices=()):
    return Option(
        id="an-option",
        family=Family.BOTH_EYES,
        title="An operation",
        doses=doses,
        expected_correction_pd=38,
        expected_residual_pd=2,
        reasons_for=(),
        reasons_against=(),
        notices=notices,
    )


def plan(an_option, **changed):
    given = {
        "schema": 1,
        "patient_id": "0192f0c0-0000-7000-8000-000000000001",
        "patient_digest": digest(write(PATIENT)),
        "examination_id": "0192f0c0-0000-7000-8000-000000000002",
        "examination_digest": "e" * 64,
        "engine_version": "1.0.0",
        "table": TableStamp(
            id="wright-after-parks", name="Wright, after Parks", provenance=PROVENANCE, caution="A guide."
        ),
        "case": Case(
            schema=1,
            examination=Examination(
                schema=1,
                examined_on="2026-11-20",
                readings=(
                    Reading(gaze=Gaze.PRIMARY, range=Range.DISTANCE, correction=Correction.WITH, horizontal_pd=40),
                ),
            ),
            table="wright-after-parks",
        ),
        "option": an_option,
        "note": "",
    }
    return Plan(**given | changed)


def drawing(*doses):
    return tuple(
        DrawnMuscle(
            eye=each.eye,
            muscle=each.muscle,
            operation=each.operation,
            offset=each.offset.direction if each.offset else None,
        )
        for each in doses
    )


def attestation(a_plan, **changed):
    given = {
        "plan_id": "0192f0c0-0000-7000-8000-000000000003",
        "plan_digest": digest(write(a_plan)),
        "drawn": drawing(*a_plan.option.doses),
        "acknowledged": tuple(each.code for each in a_plan.option.notices if each.level is Level.CAUTION),
        "signer_name": "Ilse Marrow",
        "signed_at": "2026-11-25T09:30:00+01:00",
    }
    return Attestation(**given | changed)
