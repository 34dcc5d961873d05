"""Sutures and needles by their generic names, and the needles that do not go into sclera.

No maker's names: a word says what the thing is, so that every clinic finds its own under it.
"""

from __future__ import annotations

from enum import StrEnum

from planner.provenance import Mark, Provenance


class Needle(StrEnum):
    """The point of a needle."""

    SPATULA = "spatulated"
    TAPER = "taper"
    TAPER_CUT = "taper-cut"
    CUTTING = "cutting"
    REVERSE_CUTTING = "reverse cutting"

    @property
    def is_for_sclera(self) -> bool:
        """Whether it may pass through sclera: nothing that cuts may.

        Common practice of the trade: a spatulated needle, and never a cutting or a reverse cutting one. From memory,
        verify: a taper-cut needle cuts with its tip, so it counts among those that cut; a taper needle has no edge.
        """
        return self not in (*CUTTING_EDGES, *CUTTING_TIPS)


CUTTING_EDGES = (Needle.CUTTING, Needle.REVERSE_CUTTING)
"""Points with an edge above or below their path: in sclera 0.3 mm thin such an edge cuts towards the retina or out."""

CUTTING_TIPS = (Needle.TAPER_CUT,)
"""Round needles with a short cutting tip, for tough tissue: where sclera is 0.3 mm thin the tip goes through it."""

SCLERA = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="a spatulated needle parts the layers of sclera; a cutting edge above or below its path cuts through them",
)


class Suture(StrEnum):
    """A suture by its material and what becomes of it."""

    POLYGLACTIN = "polyglactin, absorbable"
    POLYDIOXANONE = "polydioxanone, slowly absorbable"
    POLYESTER = "polyester, non-absorbable"
    POLYPROPYLENE = "polypropylene, non-absorbable"
    NYLON = "nylon, non-absorbable"
    SILK = "silk, non-absorbable"


class Gauge(StrEnum):
    """The thickness of a suture, by the size of the pharmacopoeia."""

    FOUR = "4-0"
    FIVE = "5-0"
    SIX = "6-0"
    SEVEN = "7-0"
    EIGHT = "8-0"
