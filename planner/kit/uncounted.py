"""Operations that a list names and nothing is counted for: their plan is not held, or their row is stopped."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from planner.card.words import date_words
from planner.provenance import Mark, Provenance
from planner.values.kit import TeamDay, Uncounted
from planner.values.statement import Level, Notice

SAID = Provenance(mark=Mark.HOUSE_RULE, source="what a count leaves out is said beside it")


def uncounted(days: Sequence[TeamDay]) -> tuple[Uncounted, ...]:
    """Every operation needs a set of instruments at least, so one that needs nothing was not counted."""
    return tuple(
        Uncounted(on=day.on, team=day.team, place=day.place, number=number)
        for day in days
        for number, case in enumerate(day.cases, start=1)
        if not case.needs
    )


def uncounted_notices(found: Sequence[Uncounted]) -> tuple[Notice, ...]:
    """A caution for each list that is not counted in full."""
    lists = groupby(found, key=lambda each: (each.on, each.team, each.place))
    return tuple(
        Notice(
            code=f"not_counted-{order}",
            text=f"{date_words(on)}, {', '.join(filter(None, (team, place)))}: {_text(tuple(numbers))}",
            provenance=SAID,
            facts={"on": on, "team": team},
            level=Level.CAUTION,
        )
        for order, ((on, team, place), numbers) in enumerate(lists, start=1)
    )


def _text(left_out: tuple[Uncounted, ...]) -> str:
    named = " and ".join(_parts([str(each.number) for each in left_out]))
    if len(left_out) == 1:
        return (
            f"operation {named} is not counted, for its plan is not on this device or its row is stopped. "
            "Pack for it by hand."
        )
    return (
        f"operations {named} are not counted, for their plans are not on this device or their rows are stopped. "
        "Pack for them by hand."
    )


def _parts(numbers: list[str]) -> Iterator[str]:
    """All but the last between commas, then the last."""
    if numbers[:-1]:
        yield ", ".join(numbers[:-1])
    yield numbers[-1]
