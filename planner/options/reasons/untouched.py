"""Muscles operated before, and those that stay untouched for a later operation."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye, Muscle
from planner.dosing.draft import Draft
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.situation import Situation

PREDICTABLE = common_practice("an untouched muscle answers more predictably than one operated before")
RESERVE = common_practice("a second operation is easier on muscles that were never touched")

HORIZONTAL = frozenset((eye, muscle) for eye in Eye for muscle in (Muscle.MR, Muscle.LR))
MANY, FEW = 3, 1


def reasons(situation: Situation, draft: Draft) -> Iterator[Reason]:
    """Whether the option keeps to untouched muscles, and how many horizontal recti it leaves untouched."""
    before = {(each.eye, each.muscle) for each in situation.examination.previous_operations}
    now = {(dose.eye, dose.muscle) for dose in draft.doses}
    again = len(now & before)
    if again:
        text = f"{again} of its {len(now)} muscles {'was' if again == 1 else 'were'} operated before{_better(before)}."
        yield speaks_against("operated_before", text, PREDICTABLE, again=float(again), muscles=float(len(now)))
    elif before & HORIZONTAL:
        yield speaks_for("untouched_muscles", "It keeps to muscles that were never operated.", PREDICTABLE)
    unspent = len(HORIZONTAL - before - now)
    if unspent >= MANY:
        text = f"{unspent} horizontal recti stay untouched for a later operation."
        yield speaks_for("many_untouched", text, RESERVE, untouched=float(unspent))
    elif unspent <= FEW:
        text = f"{'No' if unspent == 0 else unspent} horizontal rectus stays untouched for a later operation."
        yield speaks_against("few_untouched", text, RESERVE, untouched=float(unspent))


def _better(before: set[tuple[Eye, Muscle]]) -> str:
    """The horizontal recti that were never operated, in words."""
    names = []
    for muscle in (Muscle.MR, Muscle.LR):
        free = [eye for eye in Eye if (eye, muscle) not in before]
        if len(free) == len(Eye):
            names.append(f"both {muscle.plural}")
        else:
            names += [f"the {eye} {muscle.words}" for eye in free]
    return f"; untouched: {', '.join(names)}" if names else "; no horizontal rectus is untouched"
