"""What patching one eye or wearing prisms did to the deviation: a real change or not."""

from __future__ import annotations

from collections.abc import Iterator

from planner.figures import pd
from planner.findings.size import horizontal_words
from planner.measurement import Measurements
from planner.precision.change import real_change
from planner.records.examination import Correction, Gaze, Range
from planner.records.technique import Condition
from planner.values.statement import Finding, Strength

TRIED = {Condition.AFTER_PATCHING: "after_patching", Condition.PRISM_ADAPTED: "prism_adapted"}
AGAIN = "Measure again, before the eyes are used together."


def find(measurements: Measurements, correction: Correction) -> Iterator[Finding]:
    """One sentence for each range that was measured plainly and so."""
    for condition, code in TRIED.items():
        for at in Range:
            before = measurements.horizontal(Gaze.PRIMARY, at, correction)
            after = measurements.horizontal(Gaze.PRIMARY, at, correction, condition)
            if before is None or after is None:
                continue
            method = max(before.reading.method, after.reading.method, key=lambda each: each.rank)
            change = real_change(before.value_pd, after.value_pd, at, method=method)
            yield Finding(
                code=f"{code}_{at}",
                text=(
                    f"{horizontal_words(after.value_pd)} at {at}, {condition}: {_more(change.difference_pd)} "
                    f"({pd(change.threshold_pd)} or more counts as a real change)."
                ),
                provenance=change.statement.provenance,
                facts={
                    "before_pd": before.value_pd,
                    "after_pd": after.value_pd,
                    "difference_pd": change.difference_pd,
                    "threshold_pd": change.threshold_pd,
                },
                strength=change.strength,
                settle="" if change.strength is Strength.CLEAR else AGAIN,
            )


def _more(difference_pd: float) -> str:
    if difference_pd == 0:
        return "unchanged"
    return f"{pd(difference_pd)} {'more eso (less exo)' if difference_pd > 0 else 'less eso (more exo)'} than before"
