"""The needle that goes through sclera; one with a cutting edge above or below its path is refused to everybody."""

from __future__ import annotations

from collections.abc import Iterator

from planner.provenance import Mark, Provenance
from planner.records.materials import CUTTING_EDGES, SCLERA, Needle
from planner.records.practice import Item
from planner.setup.advice import Advice, Chosen, ItemRules, Way, always, say, warn
from planner.setup.facts import Facts
from planner.values.statement import Level, Notice

FLAT, DEEP = "spatula_three_eighths", "spatula_half"

PERFORATION = Provenance(
    mark=Mark.PUBLISHED, source="survey: 728 of 554,000 muscles (0.13 %); other series up to 2.8 % of cases"
)


def advise(facts: Facts, _chosen: Chosen) -> Advice:
    """A flat underside and a flat curve; a deeper one where a lost muscle is sought."""
    change = say("deep_tissue", "Deep tissue with no room to swing the needle speaks for half a circle.")
    plane = say("stays_in_its_plane", "Its flat underside stays in the plane of the sclera in which it was started.")
    curve = say("flat_curve", "Three eighths of a circle run flat through thin sclera.")
    usual = not facts.lost and not facts.wishes.lost_muscle
    return Advice(choice=FLAT, usual=usual, reasons=(plane, curve), would_change=(change,))


def cautions(_facts: Facts, _choice: str, _chosen: Chosen) -> Iterator[Notice]:
    """How often sclera is gone through."""
    text = "Sclera is gone through in about 1 of 760 muscles: see the needle's tip through the sclera all the way."
    yield warn(Level.NOTE, "perforation", text, PERFORATION, per_cent=0.13)


def _skin(needle: Needle) -> Way:
    return Way(
        id=needle.name.lower(),
        words=f"{needle.value.capitalize()} needle",
        merit=always(f"{needle.name.lower()}_merit", "For skin."),
        never=f"A {needle.value} needle is for skin, never for sclera: its edge leaves the plane it was started in.",
        never_from=SCLERA,
    )


RULES = ItemRules(
    item=Item.NEEDLE,
    title="Needle for sclera",
    ways=(
        Way(
            id=FLAT,
            words="Spatula needle, three eighths of a circle",
            merit=always("flat_merit", "Stays in its plane, with a flat curve."),
        ),
        Way(
            id=DEEP,
            words="Spatula needle, half a circle",
            merit=always("deep_merit", "Stays in its plane, and turns where there is little room, in deep tissue."),
        ),
        *map(_skin, CUTTING_EDGES),
    ),
    advise=advise,
    cautions=cautions,
)
