"""The surgeon's changes, each to an option and a muscle that are there."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.errors import Fault, Refused
from planner.records.case import Change


def check(changes: tuple[Change, ...], drafts: list[Draft]) -> None:
    """Raise :class:`Refused` with ``unknown_option``, ``option_without_doses`` or ``unknown_muscle``."""
    faults = list(_faults(changes, {draft.recipe.id: draft for draft in drafts}))
    if faults:
        raise Refused(*faults)


def _faults(changes: tuple[Change, ...], drafts: dict[str, Draft]) -> Iterator[Fault]:
    for place, change in enumerate(changes):
        field = f"changes.{place}"
        draft = drafts.get(change.option)
        if draft is None:
            text = "There is no such option for this deviation."
            allowed = ", ".join(drafts)
            yield Fault(code="unknown_option", text=text, field=f"{field}.option", value=change.option, allowed=allowed)
        elif not draft.doses:
            text = "The table gives this option no dose, so there is none to change."
            yield Fault(code="option_without_doses", text=text, field=f"{field}.option", value=change.option)
        elif not any((dose.eye, dose.muscle) == (change.eye, change.muscle) for dose in draft.doses):
            allowed = ", ".join(f"{dose.eye} {dose.muscle}" for dose in draft.doses)
            value = f"{change.eye} {change.muscle}"
            text = "The option does not operate this muscle."
            yield Fault(code="unknown_muscle", text=text, field=f"{field}.muscle", value=value, allowed=allowed)
