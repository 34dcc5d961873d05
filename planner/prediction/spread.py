"""Published scatter of dose-responses: mean and standard deviation, by operation."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType

from planner.provenance import Mark, Provenance


class SpreadUnit(StrEnum):
    """What a spread is counted in."""

    PD = "pd"
    PD_PER_MM = "pd_per_mm"


@dataclass(frozen=True, kw_only=True)
class Spread:
    """Mean effect and its standard deviation, in ``unit``; ``count`` is how many patients, 0 where it is not known."""

    id: str
    words: str
    mean: float
    sd: float
    unit: SpreadUnit
    count: int
    provenance: Provenance

    def sd_pd(self, total_mm: float) -> float:
        """The spread of an operation that moves its muscles by ``total_mm`` in all, in prism dioptres."""
        return self.sd * total_mm if self.unit is SpreadUnit.PD_PER_MM else self.sd


def _published(source: str) -> Provenance:
    return Provenance(mark=Mark.PUBLISHED, source=source)


LAI = _published("Lai et al., J Formos Med Assoc 2025")
BAYRAMLAR = _published("Bayramlar et al., three-muscle esotropia series, both MR 5-6.5 mm and one LR 7-8 mm")
BAE_CHOI = _published("Bae & Choi, Korean J Optom Vis Sci 2012;11:107-12")
SINGLE_MR = _published("graded single MR recession, PMID 20795601, 6 months")
TRANSPOSITION = _published("Can J Ophthalmol 2022, S0008-4182(22)00049-7")
OFFSET = _published("J Pediatr Ophthalmol Strabismus 2019;56:107-15")
VELEZ = _published("Velez et al., J AAPOS 2009;13")
ZAK = Provenance(
    mark=Mark.COMPUTED,
    source=(
        "Zak, J Pediatr Ophthalmol Strabismus 1986;23:17-21: mean 16 Δ, 13 to 22 in 53 patients; "
        "SD = range / 4.54, the mean range of 53 normal values in standard deviations"
    ),
)
RANGE_OF_53_SD = 4.54

_PER_MM = (
    ("xt-one-eye-child", "one-eye recess-resect for exotropia, children", 2.82, 0.60, 0, LAI),
    ("xt-one-eye-adult", "one-eye recess-resect for exotropia, adults", 3.02, 0.62, 0, LAI),
    ("et-three-muscles", "three muscles for esotropia", 3.32, 0.62, 18, BAYRAMLAR),
    ("vertical-rectus-recess-early", "vertical rectus recession, early", 3.10, 1.52, 28, BAE_CHOI),
    ("vertical-rectus-recess", "vertical rectus recession, late", 2.94, 1.64, 28, BAE_CHOI),
    ("dvd-sr-recess", "superior rectus recession for dissociated vertical deviation", 1.82, 1.51, 0, BAE_CHOI),
)
_WHOLE = (
    ("single-mr-recess-5.0", "one MR recession of 5.0 mm", 17.33, 1.16, 0, SINGLE_MR),
    ("single-mr-recess-5.5", "one MR recession of 5.5 mm", 18.57, 2.51, 0, SINGLE_MR),
    ("single-mr-recess-6.0", "one MR recession of 6.0 mm", 23.67, 4.91, 0, SINGLE_MR),
    ("single-mr-recess-6.5", "one MR recession of 6.5 mm", 26.68, 3.87, 0, SINGLE_MR),
    ("single-mr-recess-7.0", "one MR recession of 7.0 mm", 31.93, 3.26, 0, SINGLE_MR),
    ("single-mr-recess-6.0-small", "one MR recession of 6 mm for esotropia of 14 to 20 Δ", 16.0, 1.98, 53, ZAK),
    ("io-transpose-2-behind", "inferior oblique 2 mm behind the IR insertion", 9.5, 0.9, 0, TRANSPOSITION),
    ("io-transpose-1-behind", "inferior oblique 1 mm behind the IR insertion", 12.4, 1.5, 0, TRANSPOSITION),
    ("io-transpose-level", "inferior oblique level with the IR insertion", 16.7, 1.4, 0, TRANSPOSITION),
    ("io-transpose-1-ahead", "inferior oblique 1 mm ahead of the IR insertion", 19.6, 1.7, 0, TRANSPOSITION),
    ("io-transpose-2-ahead", "inferior oblique 2 mm ahead of the IR insertion", 22.6, 5.8, 0, TRANSPOSITION),
    ("offset-half", "half tendon-width offset, pattern collapse", 13.1, 3.8, 14, OFFSET),
    ("offset-full", "full tendon-width offset, pattern collapse", 35.6, 13.7, 10, OFFSET),
    ("offset-one-eye", "one-eye recess-resect with offset, pattern collapse", 13.8, 7.9, 8, OFFSET),
    ("a-sr-and-so", "SR recession with SO posterior tenectomy, A pattern collapse", 17.0, 3.0, 0, VELEZ),
    ("a-sr-alone", "SR recession alone, A pattern collapse", 7.0, 2.0, 0, VELEZ),
)


def _catalogue() -> dict[str, Spread]:
    spreads = {}
    for unit, rows in ((SpreadUnit.PD_PER_MM, _PER_MM), (SpreadUnit.PD, _WHOLE)):
        for id_, words, mean, sd, count, provenance in rows:
            spreads[id_] = Spread(id=id_, words=words, mean=mean, sd=sd, unit=unit, count=count, provenance=provenance)
    return spreads


SPREADS = MappingProxyType(_catalogue())
"""Every published spread by its id; read-only."""
