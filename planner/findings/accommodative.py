"""The accommodative part of an esotropia: what the spectacles take away, at distance and near."""

from __future__ import annotations

from collections.abc import Iterator

from planner.accommodation.part import accommodative_part
from planner.findings.finding import finding
from planner.measurement import Measurements
from planner.records.examination import Correction, Gaze, Range
from planner.values.statement import Finding


def find(measurements: Measurements) -> Iterator[Finding]:
    """One sentence for each range measured with and without correction, where there is esotropia without it."""
    for at in Range:
        without = measurements.horizontal(Gaze.PRIMARY, at, Correction.WITHOUT)
        with_it = measurements.horizontal(Gaze.PRIMARY, at, Correction.WITH)
        if without and with_it:
            part = accommodative_part(without_pd=without.value_pd, with_pd=with_it.value_pd, at=at)
            if part:
                yield finding(part.statement, part.strength, part.settle)
