"""A muscle shortened."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice
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
        "measure_piece", "Measure the piece on the muscle laid flat and not stretched; sew to the old insertion."
    )


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice(
        "ductions_after",
        "Forced ductions after: a little tighter away from the muscle, never held. "
        "Middle and both ends of the tendon at the insertion.",
    )


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield practice("crush", "Suture behind the piece before it is cut; count both ends before the clamp comes off.")
