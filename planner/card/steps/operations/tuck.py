"""A tendon folded on itself."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, taught
from planner.values.option import Dose
from planner.values.statement import Statement


def sutures(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What it is sewn with."""
    yield practice("suture", "5-0 or 6-0 suture that stays, through both limbs of the fold.")


def steps(dose: Dose) -> Iterator[Statement]:
    """What is special about it."""
    if dose.attachment_words:
        yield practice("as_planned", f"{dose.attachment_words[:1].upper()}{dose.attachment_words[1:]}.")
    yield practice("slack", "Fold by the slack that is felt, not by a figure alone.")


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice(
        "traction_after",
        "Forced elevation in adduction after: firm near the end of the movement, and equal to what was intended.",
    )


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield taught("brown", "Too tight a tuck holds the eye from rising in adduction: loosen it before closing.")
