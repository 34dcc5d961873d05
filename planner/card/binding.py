"""Whether patient, plan and signature belong together: a card of pieces that do not is never made."""

from __future__ import annotations

from collections.abc import Iterator

from planner.checkword import check_word
from planner.errors import Fault
from planner.records.plan import Plan, Signature
from planner.signing import hindrances


def mismatches(plan: Plan, signature: Signature, *, patient_digest: str, plan_digest: str) -> tuple[Fault, ...]:
    """Nothing if all fits; else every reason why not, the gravest first."""
    return (
        *other_patient(plan, patient_digest),
        *_other_plan(signature, plan_digest),
        *_other_word(signature),
        *hindrances(plan, signature.drawn, signature.acknowledged),
    )


def other_patient(plan: Plan, patient_digest: str) -> Iterator[Fault]:
    """Where the patient is not the one, or not the version, that the plan was made for."""
    if patient_digest != plan.patient_digest:
        yield Fault(
            code="other_patient",
            text="The plan was made for another patient, or for another version of this patient's record.",
            field="patient",
            value=patient_digest,
            allowed=plan.patient_digest,
        )


def _other_plan(signature: Signature, plan_digest: str) -> Iterator[Fault]:
    if plan_digest != signature.plan_digest:
        yield Fault(
            code="other_plan",
            text="The signature belongs to another plan, or the plan was changed after it was signed.",
            field="plan",
            value=plan_digest,
            allowed=signature.plan_digest,
        )


def _other_word(signature: Signature) -> Iterator[Fault]:
    word = check_word(signature.plan_digest)
    if signature.check_word != word:
        yield Fault(
            code="other_check_word",
            text="The check word is not the one of the signed plan.",
            field="signature.check_word",
            value=signature.check_word,
            allowed=word,
        )
