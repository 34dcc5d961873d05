"""The suture from muscle to sclera, compared with the published strength of one such material."""

from __future__ import annotations

from collections.abc import Iterator

from planner.provenance import Mark, Provenance
from planner.records.practice import FigureName, Item
from planner.setup.advice import MEMORY, Advice, Chosen, ItemRules, Way, always, say, warn
from planner.setup.facts import Facts
from planner.values.statement import Level, Notice, Statement

BRAIDED, MONOFILAMENT, STAYING = "braided_absorbed", "monofilament_absorbed", "staying"

STRENGTH_PER_CENT = {2: 75, 3: 50, 4: 25, 5: 0}
"""What remains of the strength of polyglactin 910, 6-0 and thicker, after so many weeks."""

ABSORBED_DAYS = (56, 70)

INSTRUCTIONS = Provenance(mark=Mark.PUBLISHED, source="instructions for use of polyglactin 910 sutures")


def advise(facts: Facts, _chosen: Chosen) -> Advice:
    """Braided and coated, absorbed once the muscle has healed."""
    names = (
        FigureName.SUTURE_WEAK_FROM_WEEKS,
        FigureName.SUTURE_WEAK_TO_WEEKS,
        FigureName.SUTURE_ABSORBED_MONTHS,
    )
    weak_from, weak_to, months = (facts.figures[name] for name in names)
    holds = say(
        "holds_while_healing",
        f"Its strength is lost in {weak_from} to {weak_to} weeks, while the muscle heals to the sclera; it is "
        f"absorbed in about {months} months.",
        facts.figures.provenance(*names),
        from_weeks=float(weak_from),
        to_weeks=float(weak_to),
        months=float(months),
    )
    softer = say("softer", "A braid handles better and is softer than a single thread.")
    return Advice(choice=BRAIDED, usual=True, reasons=(holds, published_strength(), softer), would_change=(_smooth(),))


def cautions(_facts: Facts, choice: str, _chosen: Chosen) -> Iterator[Notice]:
    """What a braid asks for."""
    if choice == BRAIDED:
        text = "Soak the braid in saline before use, or it drags. It can hold bacteria, hence the coating."
        yield warn(Level.NOTE, "soak_the_braid", text)
    if choice == STAYING:
        text = "A suture that stays can come through the conjunctiva years later."
        yield warn(Level.CAUTION, "staying_suture", text, MEMORY)


def published_strength() -> Statement:
    """The published figures that the rule is to be compared with."""
    by_week = ", ".join(f"{per_cent} % at {weeks}" for weeks, per_cent in STRENGTH_PER_CENT.items())
    low, high = ABSORBED_DAYS
    return say(
        "published_strength",
        f"Compare, published for polyglactin 910: strength still there by weeks {by_week}; absorbed in {low} to {high} "
        "days.",
        INSTRUCTIONS,
        half_at_weeks=3.0,
        none_at_weeks=5.0,
        absorbed_from_days=float(low),
        absorbed_to_days=float(high),
    )


def _smooth() -> Statement:
    text = "Where drag or infection is feared more than stiffness, a single thread runs smoother and holds no bacteria."
    return say("smoother", text)


RULES = ItemRules(
    item=Item.SUTURE,
    title="Suture to sclera",
    ways=(
        Way(
            id=BRAIDED,
            words="Braided, coated, absorbable (polyglycolic acid type)",
            merit=always("braided_merit", "Soft and easy to tie, gone after the muscle has healed."),
        ),
        Way(
            id=MONOFILAMENT,
            words="Single thread, absorbable",
            merit=always("monofilament_merit", "Runs through tissue without drag, but is stiffer and harder to tie."),
        ),
        Way(
            id=STAYING,
            words="Not absorbable",
            merit=always(
                "staying_merit", "Holds for good: some use it for tucks and where healing is in doubt.", MEMORY
            ),
        ),
    ),
    advise=advise,
    cautions=cautions,
)
