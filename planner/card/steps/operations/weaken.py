"""A muscle let out: its tendon or belly cut, in part or whole, as the plan says."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, taught
from planner.values.option import Dose
from planner.values.statement import Statement


def sutures(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What it is sewn with."""
    yield practice("suture", "None where it is cut free; else as the plan says.")


def steps(dose: Dose) -> Iterator[Statement]:
    """What is special about it."""
    if dose.attachment_words:
        yield practice("as_planned", f"{dose.attachment_words[:1].upper()}{dose.attachment_words[1:]}.")


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice("traction_after", "Exaggerated traction after: the muscle is no longer felt.")


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield taught("overdone", "Equal work on both sides is easily overdone or underdone: compare before closing.")
