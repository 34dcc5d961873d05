"""Everything that goes with one dose."""

from __future__ import annotations

from dataclasses import dataclass

from planner.card.steps import always, muscles
from planner.card.steps.operations import OPERATIONS
from planner.card.steps.sewing import decides, sewn
from planner.values.option import Dose
from planner.values.sewing import Sewing
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Details:
    """Sentences for one muscle, in the order in which they are needed."""

    sutures: tuple[Statement, ...]
    steps: tuple[Statement, ...]
    checks: tuple[Statement, ...]
    pitfalls: tuple[Statement, ...]


def details(dose: Dose, sewing: Sewing | None = None) -> Details:
    """The details of a dose; ``sewing`` is what the operation's set-up says, where there is one."""
    operation = OPERATIONS[dose.operation]
    prepared = sewn(sewing) if sewing and decides(dose.operation, sewing) else None
    return Details(
        sutures=tuple(prepared or operation.sutures(dose)),
        steps=(*operation.steps(dose), *always.steps(dose)),
        checks=(*always.before(dose), *operation.checks(dose)),
        pitfalls=(*operation.pitfalls(dose), *muscles.pitfalls(dose)),
    )
