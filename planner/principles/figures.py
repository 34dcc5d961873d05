"""The published figures that principles quote."""

from __future__ import annotations

from planner.provenance import Mark, Provenance
from planner.rules.recti import ISCHAEMIA
from planner.values.statement import Statement

THYROID_INFERIOR = Statement(
    code="thyroid_inferior_rectus",
    text="Inferior rectus recession in thyroid eye disease corrects 3.5 Δ per mm.",
    provenance=Provenance(mark=Mark.PUBLISHED, source="PMC6081543"),
    facts={"pd_per_mm": 3.5},
)
THREE_RECTI = Statement(
    code="three_recti",
    text="Two vertical recti moved and the medial recessed make three: 2 of 87 eyes had anterior segment ischaemia.",
    provenance=ISCHAEMIA,
    facts={"eyes": 2.0, "of_eyes": 87.0},
)
FIFTEEN = Statement(
    code="fifteen_rule",
    text="Superior oblique palsy: up to 15 Δ in primary position one muscle, more two.",
    provenance=Provenance(mark=Mark.COMMON_PRACTICE, source="superior oblique palsy: the 15 Δ rule"),
    facts={"limit_pd": 15.0},
)
