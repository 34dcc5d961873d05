"""Whether the deviation is constant, intermittent or latent, as it was recorded."""

from __future__ import annotations

from collections.abc import Iterator

from planner.figures import inside
from planner.provenance import Mark, Provenance
from planner.records.examination import Constancy, Examination
from planner.values.statement import Finding, Strength

SEEN = Provenance(mark=Mark.MEASURED, source="cover and uncover test of this examination")
WORDS = {
    Constancy.CONSTANT: "The deviation is always there.",
    Constancy.INTERMITTENT: "The deviation comes and goes.",
    Constancy.LATENT: "The deviation shows only when fusion is broken.",
}


def find(examination: Examination) -> Iterator[Finding]:
    """One sentence; none where nothing was recorded."""
    constancy = examination.constancy
    if constancy is not None:
        yield Finding(
            code="constancy",
            text=f"{constancy.capitalize()}: {inside(WORDS[constancy])}",
            provenance=SEEN,
            facts={"constancy": constancy.value},
            strength=Strength.CLEAR,
            settle="",
        )
