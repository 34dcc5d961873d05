"""Everything that goes with one dose."""

from __future__ import annotations

from dataclasses import dataclass

from planner.card.steps import always, muscles
from planner.card.steps.operations import OPERATIONS
from planner.values.option import Dose
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Details:
    """Sentences for one muscle, in the order in which they are needed."""

    sutures: tuple[Statement, ...]
    steps: tuple[Statement, ...]
    checks: tuple[Statement, ...]
    pitfalls: tuple[Statement, ...]


def details(dose: Dose) -> Details:
    """The details of a dose."""
    operation = OPERATIONS[dose.operation]
    return Details(
        sutures=tuple(operation.sutures(dose)),
        steps=(*operation.steps(dose), *always.steps(dose)),
        checks=(*always.before(dose), *operation.checks(dose)),
        pitfalls=(*operation.pitfalls(dose), *muscles.pitfalls(dose)),
    )
