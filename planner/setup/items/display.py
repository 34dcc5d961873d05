"""Where the plan is seen during the operation."""

from __future__ import annotations

from collections.abc import Iterator

from planner.records.practice import Item
from planner.setup.advice import Advice, Chosen, ItemRules, Way, always, say, warn
from planner.setup.facts import Facts
from planner.values.statement import Level, Notice

PAPER, TABLET = "paper", "tablet"


def advise(_facts: Facts, _chosen: Chosen) -> Advice:
    """On the wall, in the surgeon's sight."""
    seen = say("in_sight", "The plan hangs where the surgeon sees it without turning away from the patient.")
    change = say("tablet_stands", "A tablet that stands upright and stays awake shows the same card.")
    return Advice(choice=PAPER, usual=True, reasons=(seen,), would_change=(change,))


def cautions(_facts: Facts, choice: str, _chosen: Chosen) -> Iterator[Notice]:
    """The card in sight has to be this card."""
    text = "Compare its check word with this sheet's before the patient is draped."
    yield warn(Level.NOTE, "compare_check_word", text)
    if choice == TABLET:
        text = "Hang the paper too: a tablet can go dark, be moved, or run out of power."
        yield warn(Level.NOTE, "paper_too", text)


RULES = ItemRules(
    item=Item.DISPLAY,
    title="The plan in sight",
    ways=(
        Way(
            id=PAPER,
            words="Printed card on the wall, in the surgeon's sight",
            merit=always("paper_merit", "Always on, and the same for everybody in the room."),
        ),
        Way(
            id=TABLET,
            words="Tablet with the card, upright in the surgeon's sight",
            merit=always("tablet_merit", "Large, and says at once if the plan was replaced."),
        ),
    ),
    advise=advise,
    cautions=cautions,
)
