"""The front fibres of a superior oblique moved forward and out."""

from __future__ import annotations

from collections.abc import Iterator

from planner.card.steps.say import practice, taught
from planner.values.option import Dose
from planner.values.statement import Statement


def sutures(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What it is sewn with."""
    yield practice(
        "suture", "non-absorbable 6-0 suture, with a spatulated needle, through the front half of the tendon alone."
    )


def steps(dose: Dose) -> Iterator[Statement]:
    """What is special about it."""
    if dose.attachment_words:
        yield practice("as_planned", f"{dose.attachment_words[:1].upper()}{dose.attachment_words[1:]}.")
    yield practice("split", "Split the front half of the tendon off along its fibres; leave the back half where it is.")


def checks(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """What to check after it."""
    yield practice("fundus", "Look at the fundus: the torsion should have turned inwards.")


def pitfalls(dose: Dose) -> Iterator[Statement]:  # noqa: ARG001 -- every operation is asked alike
    """Where it may go wrong."""
    yield taught(
        "overdone",
        "Early overcorrection of the torsion is usual and fades; a vertical deviation that remains is not from this.",
    )
