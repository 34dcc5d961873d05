"""Loupe or microscope, never the naked eye.

a muscle may have slipped or been lost   microscope
an eye of this plan was operated before  microscope
else                                     loupe, or what is usual in the clinic
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.provenance import Mark, Provenance
from planner.records.practice import FigureName, Item
from planner.setup.advice import Advice, Chosen, ItemRules, Way, always, say, warn
from planner.setup.facts import Facts, place_words
from planner.values.statement import Level, Notice, Statement

LOUPE, MICROSCOPE, NAKED_EYE = "loupe", "microscope", "naked_eye"

SCLERA = Provenance(mark=Mark.PUBLISHED, source="sclera behind the insertions of the recti: 0.3 mm")


def loupe_merit(facts: Facts) -> Statement:
    """With the working distance as it stands in this clinic."""
    names = (FigureName.LOUPE_FROM_CM, FigureName.LOUPE_TO_CM)
    nearest, farthest = (facts.figures[name] for name in names)
    return say(
        "loupe_merit",
        f"Low magnification with its own light, {nearest} to {farthest} cm away: the surgeon goes round the head, and "
        "the assistant has room.",
        facts.figures.provenance(*names),
        from_cm=float(nearest),
        to_cm=float(farthest),
    )


def advise(facts: Facts, _chosen: Chosen) -> Advice:
    """The microscope where scar or a lost muscle is to be expected."""
    reasons = [*_lost(facts), *_reoperated(facts)]
    if reasons:
        text = "Once the muscle is on its hook and the scar is free, a loupe gives more freedom for the rest."
        return Advice(choice=MICROSCOPE, usual=False, reasons=tuple(reasons), would_change=(say("scar_is_free", text),))
    return Advice(
        choice=LOUPE,
        usual=True,
        reasons=(
            say("no_earlier_operation", "No earlier operation on an eye of this plan is recorded: a loupe is usual."),
        ),
        would_change=(
            say(
                "scar_or_lost_muscle",
                "An earlier operation on the eye, or a muscle that has slipped or cannot be found, speaks for the "
                "microscope.",
            ),
        ),
    )


def cautions(facts: Facts, choice: str, _chosen: Chosen) -> Iterator[Notice]:
    """A microscope takes time where both eyes are operated."""
    if choice == MICROSCOPE and facts.is_bilateral:
        text = "The microscope has to be moved from eye to eye: allow for the time, and keep the drapes clear of it."
        yield warn(Level.NOTE, "microscope_both_eyes", text)


def _lost(facts: Facts) -> Iterator[Statement]:
    if facts.lost:
        text = f"The {place_words(facts.lost)} may have slipped or been lost: searching asks for more detail."
        yield say("may_be_lost", text)
    elif facts.wishes.lost_muscle:
        yield say("may_be_lost", "A muscle is thought to have slipped or been lost: searching asks for more detail.")


def _reoperated(facts: Facts) -> Iterator[Statement]:
    if facts.reoperated:
        were = "were" if len(facts.reoperated) > 1 else "was"
        text = f"The {place_words(facts.reoperated)} {were} operated before: scar is told from muscle in more detail."
        yield say("operated_before", text)


RULES = ItemRules(
    item=Item.MAGNIFICATION,
    title="Magnification",
    ways=(
        Way(id=LOUPE, words="Loupe with its own light", merit=loupe_merit),
        Way(
            id=MICROSCOPE,
            words="Operating microscope",
            merit=always(
                "microscope_merit",
                "More detail, less freedom: it is moved for each position and each eye.",
            ),
        ),
        Way(
            id=NAKED_EYE,
            words="Naked eye",
            merit=always("naked_eye_merit", "Nothing to set up."),
            never=(
                "A needle is not passed through sclera without magnification: behind the insertions it is about 0.3 mm "
                "thick."
            ),
            never_from=SCLERA,
        ),
    ),
    advise=advise,
    cautions=cautions,
)
