"""The operation as the consent names it against the signed plan: eyes, muscles, operations."""

from __future__ import annotations

from planner.checks.comparisons.given import given
from planner.checks.round import Round
from planner.records.plan import Plan
from planner.records.theatre_check import Consented, Entry
from planner.values.checks import Stop


def compare(entry: Entry, check: Round) -> Stop | None:
    """Every difference in words, in the order of the plan and then of the consent."""
    differences = compare_consent(check.plan, given(entry.consented, "consented"))
    if not differences:
        return None
    text = "The consent and the signed plan are not the same operation."
    return Stop(code="consent_differs", step=entry.step, text=text, differences=differences)


def compare_consent(plan: Plan, consented: tuple[Consented, ...]) -> tuple[str, ...]:
    """Millimetres and the way of a moved tendon are not consented to, so they are not compared."""
    planned = tuple(Consented(eye=dose.eye, muscle=dose.muscle, operation=dose.operation) for dose in plan.option.doses)
    return (
        *(f"Only in the signed plan: {_words(each)}." for each in planned if each not in consented),
        *(f"Only in the consent: {_words(each)}." for each in consented if each not in planned),
    )


def _words(each: Consented) -> str:
    return f"{each.operation.verb} the {each.eye.value} {each.muscle.words}"
