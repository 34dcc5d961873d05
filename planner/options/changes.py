"""The surgeon's changes, each to an option and a muscle that are there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.errors import Fault, Refused
from planner.records.case import Change
from planner.values.option import Operation, Option

FIGURELESS_THAT_TAKE_ONE = (Operation.TUCK,)
"""A surgeon who tucks by millimetres may write them down, though none are published."""


def check(changes: tuple[Change, ...], options: Sequence[Option]) -> None:
    """Raise :class:`Refused` unless each change has its dose.

    With ``unknown_option``, ``option_without_doses``, ``unknown_muscle`` or ``dose_without_figure``.
    """
    faults = list(_faults(changes, {option.id: option for option in options}))
    if faults:
        raise Refused(*faults)


def _faults(changes: tuple[Change, ...], options: dict[str, Option]) -> Iterator[Fault]:
    for place, change in enumerate(changes):
        field = f"changes.{place}"
        option = options.get(change.option)
        if option is None:
            text = "There is no such option for this deviation."
            allowed = ", ".join(options)
            yield Fault(code="unknown_option", text=text, field=f"{field}.option", value=change.option, allowed=allowed)
        elif not option.doses:
            text = "This option has no dose, so there is none to change."
            yield Fault(code="option_without_doses", text=text, field=f"{field}.option", value=change.option)
        else:
            yield from _faults_of_muscle(field, change, option)


def _faults_of_muscle(field: str, change: Change, option: Option) -> Iterator[Fault]:
    value = f"{change.eye} {change.muscle}"
    dose = next((each for each in option.doses if (each.eye, each.muscle) == (change.eye, change.muscle)), None)
    if dose is None:
        allowed = ", ".join(f"{each.eye} {each.muscle}" for each in option.doses)
        text = "The option does not operate this muscle."
        yield Fault(code="unknown_muscle", text=text, field=f"{field}.muscle", value=value, allowed=allowed)
    elif dose.mm is None and dose.operation not in FIGURELESS_THAT_TAKE_ONE:
        text = "What is done to this muscle has no millimetres that could be changed."
        yield Fault(code="dose_without_figure", text=text, field=f"{field}.mm", value=value)
