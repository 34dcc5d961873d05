"""The axial length: information, never a reason to change a dose."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye
from planner.direction import Direction
from planner.dosing.draft import Draft
from planner.figures import mm
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.statement import Level, Notice

INVERSE = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "Kushner et al., Arch Ophthalmol 1989;107:1616-8; Woo 1997: Δ/mm = 9.51 - 0.29 x axial length; judged of no "
        "practical use beyond the angle, Kushner 1993;111:75-9"
    ),
)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A note for each operated eye of an esodeviation whose axial length is known."""
    if situation.direction is not Direction.ESO:
        return
    for eye in Eye:
        length_mm = situation.axial_length_mm(eye)
        if eye in draft.recipe.eyes and length_mm is not None:
            per_mm = steady(effect_pd_per_mm(length_mm), 2)
            yield Notice(
                code=f"axial_length-{eye}",
                text=(
                    f"{eye.capitalize()} eye, axial length {mm(length_mm)}: a series had {per_mm:g} Δ/mm at this "
                    "length. The angle already holds it, so the dose is not changed."
                ),
                provenance=INVERSE,
                facts={"eye": eye.value, "axial_length_mm": length_mm, "pd_per_mm": per_mm},
                level=Level.NOTE,
            )


def effect_pd_per_mm(axial_length_mm: float) -> float:
    """9.51 - 0.29 AL (Woo 1997)."""
    return 9.51 - 0.29 * axial_length_mm
