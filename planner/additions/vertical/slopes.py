"""What a millimetre on a vertical rectus corrects."""

from __future__ import annotations

from planner.additions.dose import Slope
from planner.additions.overaction import has_diagnosis
from planner.additions.sources import WRIGHT
from planner.anatomy import Eye, Muscle
from planner.prediction import SPREADS
from planner.provenance import Mark, Provenance
from planner.records.diagnosis import Diagnosis
from planner.situation import Situation
from planner.values.option import Operation

MEASURED = SPREADS["vertical-rectus-recess"]

THYROID = Provenance(mark=Mark.PUBLISHED, source="PMC6081543: inferior rectus recession in thyroid eye disease")

RECESSION = Slope(pd_per_mm=3.0, sd_pd_per_mm=MEASURED.sd, provenance=WRIGHT)
RESECTION = Slope(pd_per_mm=3.0, sd_pd_per_mm=None, provenance=WRIGHT)
THYROID_INFERIOR = Slope(pd_per_mm=3.5, sd_pd_per_mm=None, provenance=THYROID)


def slope_of(situation: Situation, eye: Eye, muscle: Muscle, operation: Operation) -> Slope:
    """3 Δ/mm; 3.5 for the inferior rectus of an eye with thyroid disease. No spread is published for resections."""
    if operation is Operation.RESECT:
        return RESECTION
    if muscle is Muscle.IR and has_diagnosis(situation, Diagnosis.THYROID_EYE_DISEASE, eye):
        return THYROID_INFERIOR
    return RECESSION
