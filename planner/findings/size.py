"""How large the deviation is and in which direction, at distance and near."""

from __future__ import annotations

from collections.abc import Iterator

from planner.direction import direction_of
from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.records.examination import Correction, Examination, Gaze, Range, Reading
from planner.thresholds import same
from planner.values.statement import Statement

MEASURED = Provenance(mark=Mark.MEASURED, source="prism and alternate cover test of this examination")


def find(examination: Examination) -> tuple[Statement, ...]:
    """A sentence for each primary reading, distance first, with correction first."""
    taken = [examination.reading(Gaze.PRIMARY, at, correction) for at in Range for correction in Correction]
    return tuple(statement for reading in taken if reading for statement in _sentences(reading))


def _sentences(reading: Reading) -> Iterator[Statement]:
    how = f"at {reading.range} {reading.correction} correction"
    if reading.horizontal_pd is not None:
        yield Statement(
            code=f"horizontal_{reading.range}",
            text=f"{horizontal_words(reading.horizontal_pd)} {how}.",
            provenance=MEASURED,
            facts={"horizontal_pd": reading.horizontal_pd, "correction": reading.correction.value},
        )
    if reading.vertical_pd is not None:
        yield Statement(
            code=f"vertical_{reading.range}",
            text=f"{vertical_words(reading.vertical_pd)} {how}.",
            provenance=MEASURED,
            facts={"vertical_pd": reading.vertical_pd, "correction": reading.correction.value},
        )


def horizontal_words(horizontal_pd: float) -> str:
    """``Esodeviation 40 Δ``."""
    if same(horizontal_pd, 0):
        return "No horizontal deviation"
    return f"{direction_of(horizontal_pd).words.capitalize()} {pd(horizontal_pd)}"


def vertical_words(vertical_pd: float) -> str:
    """``Right hyper 6 Δ``."""
    if same(vertical_pd, 0):
        return "No vertical deviation"
    return f"{'Right' if vertical_pd > 0 else 'Left'} hyper {pd(vertical_pd)}"
