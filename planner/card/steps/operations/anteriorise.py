"""An inferior oblique brought forward to the inferior rectus."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, taught
from planner.values.option import Dose
from planner.values.statement import Statement


def sutures(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What it is sewn with."""
    yield practice(
        "suture", "Absorbable 6-0 suture, spatulated needle at each end, locked at both edges of the tendon."
    )


def steps(dose: Dose) -> Iterator[Statement]:
    """What is special about it."""
    if dose.attachment_words:
        yield practice("as_planned", f"{dose.attachment_words[:1].upper()}{dose.attachment_words[1:]}.")


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice(
        "traction_after",
        "Exaggerated traction after, and the place against the inferior rectus insertion measured once more.",
    )


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield taught(
        "anti_elevation",
        "Spread wide, or ahead of the inferior rectus insertion, it can hold the eye down in upgaze: keep its fibres "
        "together.",
    )
