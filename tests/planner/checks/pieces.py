"""A signed card, and a check of it answered honestly, step by step."""

from dataclasses import replace

from planner import checks
from planner.canonical import digest
from planner.card.alerts.entered import says_nothing
from planner.checks import Round
from planner.codec import write
from planner.records.check_item import CheckItem, Phase, TeamRole
from planner.records.theatre_check import CardState, Consented, Entry, LocalAsked, Marked, TeamMember
from planner.signing import sign
from planner.values.checks import Way
from tests.planner.signing import pieces

RECORD_ID = "0190a0b0-0000-7000-8000-000000000007"
PATIENT = pieces.PATIENT
NURSE = TeamMember(name="Nia Example", role=TeamRole.NURSE)
SURGEON = TeamMember(name="Mira Example", role=TeamRole.SURGEON)
ONE_EYE = (pieces.RIGHT_MR, pieces.RIGHT_LR)
BOTH_EYES = (pieces.RIGHT_MR, pieces.LEFT_MR)
OWN = LocalAsked(
    record_id=RECORD_ID,
    item=CheckItem(
        phase=Phase.TIME_OUT,
        role=TeamRole.NURSE,
        title="Bed",
        aloud="Is the bed locked?",
        goes_on="Locked",
        stops="Not locked",
    ),
)


def begun(phase=Phase.SIGN_IN, *, doses=ONE_EYE, **facts):
    """A check with its two people, nothing entered."""
    plan = pieces.plan(pieces.option(*doses))
    known = Round(
        patient=PATIENT,
        plan=plan,
        plan_digest=digest(write(plan)),
        signature=sign(plan, pieces.attestation(plan)),
        card=CardState.CURRENT,
        phase=phase,
        first=NURSE,
        second=SURGEON,
    )
    return replace(known, **facts)


def honest(step, check):
    """What a step is answered with when all is well."""
    match step.way:
        case Way.WRISTBAND:
            return Entry(step=step.id, hospital_number=check.patient.hospital_number, born_on=check.patient.born_on)
        case Way.WRISTBAND_NUMBER:
            return Entry(step=step.id, hospital_number=check.patient.hospital_number)
        case Way.PAPER:
            return Entry(step=step.id, check_word=check.signature.check_word)
        case Way.CONSENT:
            return Entry(step=step.id, consented=consented(check.plan))
        case Way.MARK:
            eyes = {dose.eye.value for dose in check.plan.option.doses}
            return Entry(step=step.id, marked=Marked.BOTH if len(eyes) > 1 else Marked(eyes.pop()))
        case Way.ALLERGY:
            return Entry(step=step.id, answer="none" if says_nothing(check.patient.allergies or "none") else "as_card")
        case _:
            return Entry(step=step.id, answer=next(each.value for each in step.answers if each.effect.value == "on"))


def consented(plan):
    return tuple(Consented(eye=dose.eye, muscle=dose.muscle, operation=dose.operation) for dose in plan.option.doses)


def entered(check, *entries):
    return replace(check, entries=(*check.entries, *entries))


def until(check, step_id=None):
    """The check answered honestly up to a step, or to its end."""
    while (step := checks.follow(check).step) and step.id != step_id:
        check = entered(check, honest(step, check))
    return check
