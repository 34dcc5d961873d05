"""What the additions are dosed by, as it is printed beside them."""

from __future__ import annotations

from planner.prediction import SPREADS
from planner.provenance import Mark, Provenance
from planner.values.table_stamp import TableStamp

GRADED = Provenance(mark=Mark.PUBLISHED, source="J Egypt Ophthalmol Soc 2016;109:161-6")
FLODIN = Provenance(mark=Mark.PUBLISHED, source="Flodin et al., Strabismus 2022;30:8-17")
OFFSETS = Provenance(
    mark=Mark.PUBLISHED,
    source="J Pediatr Ophthalmol Strabismus 2019;56:107-15, V exotropia: half a width up to 25 Δ, a full one beyond",
)
WRIGHT = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "Wright KW (ed.), Pediatric Ophthalmology and Strabismus, appendix of surgical numbers: about 3 Δ per mm; "
        "measured for recession 2.94 ± 1.64, Bae & Choi, Korean J Optom Vis Sci 2012;11:107-12 (n = 28)"
    ),
)
UNDOSED = Provenance(mark=Mark.HOUSE_RULE, source="no dose is made up where none is published")

VERTICAL_RECTI = TableStamp(
    id="vertical-recti",
    name="Vertical recti, 3 Δ per mm",
    provenance=WRIGHT,
    caution="A guide only: single patients answered from almost nothing to twice as much.",
)
INFERIOR_GRADED = TableStamp(
    id="inferior-oblique-graded",
    name="Inferior oblique, graded by the deviation in adduction",
    provenance=GRADED,
    caution="Print gives a range and no correction in prism dioptres.",
)
INFERIOR_BY_PLACE = TableStamp(
    id="inferior-oblique-by-place",
    name="Inferior oblique, by place against the inferior rectus",
    provenance=SPREADS["io-transpose-level"].provenance,
    caution="One series of 38 patients.",
)
DISSOCIATED = TableStamp(
    id="dissociated-superior-rectus",
    name="Superior rectus in dissociated deviation, 1.82 Δ per mm",
    provenance=SPREADS["dvd-sr-recess"].provenance,
    caution="The spread is nearly as large as the effect itself.",
)
HARADA_ITO = TableStamp(
    id="harada-ito",
    name="Harada-Ito, one series",
    provenance=FLODIN,
    caution="A mean effect without a dose: the amount is set in theatre.",
)
TENDON_OFFSETS = TableStamp(
    id="tendon-offsets",
    name="Tendons moved up or down",
    provenance=OFFSETS,
    caution="Measured in small groups of V exotropia; other patterns are treated by the same rule.",
)
NO_DOSE = TableStamp(
    id="no-published-dose",
    name="No published dose",
    provenance=UNDOSED,
    caution="The surgeon decides the amount.",
)
