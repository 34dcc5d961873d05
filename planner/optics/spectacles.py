"""What a reading gains or loses through spectacle lenses: read = true x (1 - 0.025 F).

Minus lenses read more and plus lenses less, for esotropia, exotropia and vertical deviations alike.
"""

from __future__ import annotations

from planner.provenance import Mark, Provenance

SHARE_PER_DIOPTRE = 0.025
SIGNIFICANT_D = 5.0
RULE = Provenance(
    mark=Mark.FROM_MEMORY,
    source=(
        "2.5 % per dioptre; the direction, and that it matters beyond 5 D, are published: "
        "Scattergood, Brown & Guyton, Am J Ophthalmol 1983;96:439-48"
    ),
)


def read_pd(true_pd: float, lens_d: float) -> float:
    """What a deviation reads through a lens of ``lens_d`` dioptres."""
    return true_pd * (1 - SHARE_PER_DIOPTRE * lens_d)


def true_pd(reading_pd: float, lens_d: float) -> float:
    """The deviation behind a reading through a lens of ``lens_d`` dioptres, from -20 to +20 D."""
    return reading_pd / (1 - SHARE_PER_DIOPTRE * lens_d)
