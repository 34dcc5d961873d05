"""Patient, plan, signature, operation and adjustments made into the operation note."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Annotated

from planner.card.words import eye_words, moment_words
from planner.disclaimer import DISCLAIMER
from planner.figures import pd
from planner.limits import Length
from planner.operation import unsettled
from planner.operation.effect import effect
from planner.operation.final import finally_done
from planner.operation.note.effect import effect_words, residual_words
from planner.operation.note.lines import complication, line
from planner.operation.positions import Done
from planner.operation.reviewing import review
from planner.records.operation import Adjustment, Alignment, OperationRecord
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.thresholds import same
from planner.values.operation import Effect, OperationNote, Review


@dataclass(frozen=True, kw_only=True)
class Pieces:
    """The bodies that a note is made of. ``adjustment`` is the one that stands, if the sutures were adjusted.

    ``others`` are further records of the same operation, or of its adjustment, that nobody has settled yet.
    """

    patient: Patient
    plan: Plan
    signature: Signature
    operation: OperationRecord
    adjustment: Adjustment | None = None
    others: Annotated[tuple[Done, ...], Length(0, 12)] = ()


def note(pieces: Pieces) -> OperationNote:
    """The note as a value; the record is taken as it is, whatever hinders it: what is written down is shown."""
    patient, plan, signature, operation = pieces.patient, pieces.plan, pieces.signature, pieces.operation
    found = review(plan, signature, operation)
    differs = {(each.eye, each.muscle) for each in found.differences if each.needs_reason}
    moved = {(each.eye, each.muscle): each for each in pieces.adjustment.moved} if pieces.adjustment else {}
    return OperationNote(
        full_name=patient.full_name,
        born_on=patient.born_on,
        hospital_number=patient.hospital_number,
        sex=patient.sex.value,
        allergies=patient.allergies,
        operated_on=operation.operated_on,
        surgeon_name=recorded_words(operation.surgeon_name, operation.recorded_by),
        anaesthesia=operation.anaesthesia.value if operation.anaesthesia else "",
        times_words=_times_words(operation),
        title=_title(operation),
        lines=tuple(
            line(each, moved.get((each.eye, each.muscle)), differs=(each.eye, each.muscle) in differs)
            for each in operation.muscles
        ),
        complications=tuple(map(complication, operation.complications)),
        notices=(
            *unsettled.notices(Done(operation=operation, adjustment=pieces.adjustment), pieces.others),
            *found.notices,
        ),
        effect_words=tuple(effect_words(found.effect, _finally(pieces))),
        window_words=_window_words(found),
        adjustment_words=tuple(_adjustment_words(pieces.adjustment)) if pieces.adjustment else (),
        note=operation.note,
        plan_words=(
            f"By the plan that {signature.signer_name} signed on {moment_words(signature.signed_at)}; "
            f"table {plan.table.name}, engine {plan.engine_version}."
        ),
        check_word=signature.check_word,
        disclaimer=DISCLAIMER,
    )


def _finally(pieces: Pieces) -> Effect | None:
    """The effect of what was done in the end; None where no suture was moved."""
    if pieces.adjustment is None or not pieces.adjustment.moved:
        return None
    return effect(pieces.plan, finally_done(pieces.operation, pieces.adjustment))


def _title(operation: OperationRecord) -> str:
    eyes = {each.eye for each in operation.muscles if each.done}
    return eye_words(eyes) if eyes else "NO MUSCLE OPERATED"


def _times_words(operation: OperationRecord) -> str:
    told = (("began", operation.started_at), ("ended", operation.ended_at))
    return ", ".join(f"{what} {moment_words(at)}" for what, at in told if at)


def _window_words(found: Review) -> str:
    if found.window is None:
        return ""
    times = (
        f"Adjustable: not before {moment_words(found.window.earliest_at)}, "
        f"until {moment_words(found.window.latest_at)}."
    )
    why = " ".join(f"{each.text} ({each.provenance.mark})" for each in found.window_statements)
    return f"{times} {why}"


def _adjustment_words(adjustment: Adjustment) -> Iterator[str]:
    moved = "sutures moved" if adjustment.moved else "sutures tied as they were"
    by = recorded_words(adjustment.surgeon_name, adjustment.recorded_by)
    yield f"Adjusted {moment_words(adjustment.adjusted_at)} by {by}: {moved}."
    yield f"Before: {'; '.join(map(alignment_words, adjustment.before))}."
    if adjustment.after:
        yield f"After: {'; '.join(map(alignment_words, adjustment.after))}."
    if adjustment.note:
        yield adjustment.note


def recorded_words(surgeon_name: str, recorded_by: str) -> str:
    """Who did it and, where that was somebody else, who wrote it down."""
    return f"{surgeon_name}, recorded by {recorded_by}" if recorded_by else surgeon_name


def alignment_words(alignment: Alignment) -> str:
    """``at distance 4 Δ of esodeviation, right hyper 2 Δ``."""
    parts = []
    if alignment.horizontal_pd is not None:
        parts.append(residual_words(alignment.horizontal_pd))
    if alignment.vertical_pd is not None:
        vertical_pd = alignment.vertical_pd
        side = "right" if vertical_pd > 0 else "left"
        parts.append("no vertical deviation" if same(vertical_pd, 0) else f"{side} hyper {pd(vertical_pd)}")
    return f"at {alignment.range} {', '.join(parts)}"
