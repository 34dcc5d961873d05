"""A tendon moved across its pull."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, taught
from planner.values.option import Dose
from planner.values.statement import Statement


def sutures(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What it is sewn with."""
    yield practice(
        "suture", "Absorbable 6-0 suture with spatulated needles; a non-absorbable one where the plan says so."
    )


def steps(dose: Dose) -> Iterator[Statement]:
    """What is special about it."""
    if dose.attachment_words:
        yield practice("as_planned", f"{dose.attachment_words[:1].upper()}{dose.attachment_words[1:]}.")


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice(
        "ductions_after", "Forced ductions after: no new restriction; the eye straight at rest under anaesthesia."
    )


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield taught("vessels", "Each rectus that is cut takes ciliary vessels with it: keep those that the plan leaves.")
