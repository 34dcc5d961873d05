"""How many more are taken than are counted on."""

from __future__ import annotations

from planner.records.practice import FigureName
from planner.setup.figures import Figures

HUNDRED = 100


def spare(used: int, figures: Figures) -> int:
    """A part of what is used, rounded up, and never fewer than the least; none of what is not used."""
    if used == 0:
        return 0
    part = -(-used * figures[FigureName.SPARE_PER_CENT] // HUNDRED)
    return max(part, figures[FigureName.SPARE_AT_LEAST])


def spare_words(figures: Figures) -> str:
    """The rule in a sentence."""
    per_cent, least = figures[FigureName.SPARE_PER_CENT], figures[FigureName.SPARE_AT_LEAST]
    provenance = figures.provenance(FigureName.SPARE_PER_CENT, FigureName.SPARE_AT_LEAST)
    return f"Spare: {per_cent} % of what is used, at least {least} of each ({provenance.mark.value})."
