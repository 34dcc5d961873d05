"""A fixed or an adjustable suture, and from when it may be adjusted.

wished, and a muscle of the plan takes one   adjustable
wished, and none does                        fixed; adjustable is refused
else                                         fixed, or what is usual in the clinic
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime, timedelta

from planner.records.practice import FigureName, Item
from planner.records.set_up import Cooperation
from planner.setup.advice import MEMORY, Advice, Chosen, ItemRules, Way, always, say, warn
from planner.setup.facts import Facts, in_order, place_words
from planner.setup.items.anaesthesia import BLOCK, GENERAL
from planner.values.statement import Level, Notice, Statement

FIXED, ADJUSTABLE = "fixed", "adjustable"


def advise(facts: Facts, _chosen: Chosen) -> Advice:
    """The wish, where it can be met."""
    if not facts.adjustable:
        reason = say("none_takes_one", "No muscle of this plan takes an adjustable suture.")
        return Advice(choice=FIXED, usual=False, reasons=(reason,), would_change=())
    if facts.wishes.adjustable:
        text = f"It is wished, and can be put on the {_takers(facts)}."
        change = say("cannot_be_adjusted", "A patient who will not bear the adjusting awake speaks for fixed sutures.")
        return Advice(choice=ADJUSTABLE, usual=False, reasons=(say("wished", text),), would_change=(change,))
    text = f"No adjusting is wished; it could be put on the {_takers(facts)}."
    return Advice(choice=FIXED, usual=True, reasons=(say("not_wished", text),), would_change=(_wish(),))


def refusals(facts: Facts) -> Mapping[str, Notice]:
    """Adjustable where no muscle takes one."""
    if facts.adjustable:
        return {}
    text = "No muscle of this plan takes an adjustable suture: nothing could be adjusted."
    return {ADJUSTABLE: warn(Level.STOP, "adjustable_impossible", text)}


def cautions(facts: Facts, choice: str, chosen: Chosen) -> Iterator[Notice]:
    """Who adjusts whom, and when."""
    if choice != ADJUSTABLE:
        return
    if facts.wishes.cooperation is Cooperation.NO or facts.is_child:
        text = "Adjusting asks for a patient who is awake and keeps still: plan how it is done if that fails."
        yield warn(Level.CAUTION, "adjusting_awake", text)
    if chosen.get(Item.ANAESTHESIA) == BLOCK:
        yield from _after_a_block(facts)
    elif chosen.get(Item.ANAESTHESIA) == GENERAL:
        text = "Adjust once the patient is awake enough to look at a target: muscle tone is back by then."
        yield warn(Level.NOTE, "adjust_when_awake", text)


def adjust_from(facts: Facts, chosen: Chosen) -> str:
    """The earliest moment for adjusting after a block, in its own offset; empty where none is to be waited for."""
    adjusting = (chosen.get(Item.ADJUSTMENT), chosen.get(Item.ANAESTHESIA)) == (ADJUSTABLE, BLOCK)
    if not adjusting or facts.wishes.block_at is None:
        return ""
    hours = facts.figures[FigureName.ADJUST_AFTER_BLOCK_H]
    return (datetime.fromisoformat(facts.wishes.block_at) + timedelta(hours=hours)).isoformat()


def _after_a_block(facts: Facts) -> Iterator[Notice]:
    hours = facts.figures[FigureName.ADJUST_AFTER_BLOCK_H]
    provenance = facts.figures.provenance(FigureName.ADJUST_AFTER_BLOCK_H)
    if facts.wishes.block_at is None:
        then = "Enter when the block is given, and the earliest time is shown."
    else:
        given = datetime.fromisoformat(facts.wishes.block_at)
        earliest = given + timedelta(hours=hours)
        day = "" if earliest.date() == given.date() else " on the next day"
        later = earliest.date() - given.date() > timedelta(days=1)
        when = f"{earliest:%H:%M}{f' on {earliest.date().isoformat()}' if later else day}"
        then = f"The block is timed at {given:%H:%M}: adjust at {when} at the earliest."
    yield warn(
        Level.CAUTION,
        "adjust_after_block",
        f"After a local block at least {hours} hours pass until the muscles have their tone again. {then}",
        provenance,
        hours=float(hours),
    )
    text = "A block that is topped up counts from the last top-up."
    yield warn(Level.NOTE, "block_topped_up", text, MEMORY)


def _takers(facts: Facts) -> str:
    return place_words(in_order({(dose.eye, dose.muscle) for dose in facts.adjustable}))


def _wish() -> Statement:
    text = "An outcome that is hard to foresee, as after earlier operations, speaks for an adjustable suture."
    return say("hard_to_foresee", text)


RULES = ItemRules(
    item=Item.ADJUSTMENT,
    title="Adjusting",
    ways=(
        Way(id=FIXED, words="Fixed sutures", merit=always("fixed_merit", "Tied once; nothing more is to be done.")),
        Way(
            id=ADJUSTABLE,
            words="Adjustable suture",
            merit=always("adjustable_merit", "The muscle can be let out or taken up when the patient is awake."),
        ),
    ),
    advise=advise,
    refusals=refusals,
    cautions=cautions,
)
