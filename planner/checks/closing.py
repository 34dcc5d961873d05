"""A check closed: its record, and whether a record's outcome follows from what it holds."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.checks.progress import follow
from planner.checks.round import BEFORE, AlsoSaid, Round
from planner.errors import Fault, Refused
from planner.limits import IsoMoment
from planner.records.patient import Patient
from planner.records.plan import Digest, Plan, RecordId, Signature
from planner.records.theatre_check import StopNoted, TheatreCheck
from planner.values.checks import Progress, Stop


@dataclass(frozen=True, kw_only=True)
class Closing:
    """A round that came to its end; ``after`` is the passed check of the phase before."""

    round: Round
    signature_id: RecordId
    after: RecordId | None = None
    closed_at: Annotated[str, IsoMoment()]


@dataclass(frozen=True, kw_only=True)
class Named:
    """What the records say that a check names; ``also`` in the order in which it names them."""

    patient: Patient
    plan: Plan
    plan_digest: Digest
    signature: Signature
    also: tuple[Patient, ...] = ()


def close(closing: Closing) -> TheatreCheck:
    """The record of the check; :class:`Refused` while something is still asked."""
    check = closing.round
    progress = follow(check)
    if progress.outcome is None:
        raise Refused(Fault(code="check_unfinished", text="The check is not at its end.", field="entries"))
    _refuse_out_of_order(check, closing.after)
    return TheatreCheck(
        schema=1,
        signature_id=closing.signature_id,
        plan_id=check.signature.plan_id,
        patient_id=check.plan.patient_id,
        also=tuple(each.record_id for each in check.also),
        phase=check.phase,
        card=check.card,
        after=closing.after,
        first=check.first,
        second=check.second,
        local=check.local,
        entries=check.entries,
        outcome=progress.outcome,
        stop=_noted(progress.stop),
        closed_at=closing.closed_at,
    )


def verify(body: TheatreCheck, named: Named) -> None:
    """:class:`Refused` unless the outcome follows from what was entered: a stop by its code and step."""
    check = Round(
        patient=named.patient,
        plan=named.plan,
        plan_digest=named.plan_digest,
        signature=named.signature,
        also=tuple(
            AlsoSaid(record_id=record_id, patient=said) for record_id, said in zip(body.also, named.also, strict=True)
        ),
        card=body.card,
        phase=body.phase,
        first=body.first,
        second=body.second,
        local=body.local,
        entries=body.entries,
    )
    progress = follow(check)
    _refuse_out_of_order(check, body.after)
    if _facts(body, body.stop) != _facts(progress, progress.stop):
        text = "This outcome does not follow from what was entered."
        raise Refused(Fault(code="outcome_differs", text=text, field="outcome", value=body.outcome.value))


def _facts(ended: TheatreCheck | Progress, stop: Stop | StopNoted | None) -> tuple[object, ...]:
    return ended.outcome, stop and (stop.code, stop.step)


def _refuse_out_of_order(check: Round, after: RecordId | None) -> None:
    before = BEFORE.get(check.phase)
    if (before is None) != (after is None):
        text = f"The {check.phase.value} comes after a passed {before.value}." if before else "Nothing comes before."
        raise Refused(Fault(code="phase_out_of_order", text=text, field="after"))


def _noted(stop: Stop | None) -> StopNoted | None:
    if stop is None:
        return None
    return StopNoted(code=stop.code, step=stop.step, text=" ".join((stop.text, *stop.differences)))
