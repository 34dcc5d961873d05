"""A muscle set back."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, taught
from planner.card.steps.sclera import thin
from planner.values.option import Dose
from planner.values.statement import Statement


def sutures(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What it is sewn with."""
    yield practice(
        "suture", "Absorbable 6-0 suture, spatulated needle at each end, locked at both edges of the tendon."
    )


def steps(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What is special about it."""
    yield practice(
        "measure_back", "Measure from the limbus and again from the old insertion, both ends of the new one."
    )


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice(
        "ductions_after",
        "Forced ductions after: free. Both ends at the measured distance, the tendon spread to its width, not sagging.",
    )


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield thin()
    yield taught(
        "slipped", "A bite that holds the capsule alone lets the muscle slip: take the tendon in full thickness."
    )
