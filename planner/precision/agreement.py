"""Several readings of the same thing: same gaze, range, correction and visit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.errors import Fault, Refused
from planner.precision.limits import Direction, difference_limits_pd, limits_of
from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.records.technique import Method
from planner.values.statement import Level, Notice, Statement

CHOICE = Provenance(
    mark=Mark.HOUSE_RULE,
    source=(
        "the most exact method first; then the middle reading, of two middle ones the one nearer zero; "
        "the surgeon may choose another"
    ),
)


@dataclass(frozen=True, kw_only=True)
class Repeat:
    """One of several readings of the same thing; ``value_pd`` is signed (eso +, right hyper +)."""

    value_pd: float
    method: Method = Method.PRISM_COVER


@dataclass(frozen=True, kw_only=True)
class Agreement:
    """Which reading counts. ``chosen`` is its place in what was given; ``spread_pd`` is largest minus smallest.

    Spread and limits are those of the readings by the chosen one's method; ``notices`` holds a caution if the spread
    exceeds the limits of a difference.
    """

    chosen: int
    value_pd: float
    spread_pd: float
    limits_pd: float
    reason: Statement
    notices: tuple[Notice, ...]


def settle(repeats: Sequence[Repeat], at: Range, direction: Direction = Direction.HORIZONTAL) -> Agreement:
    """The reading to plan from, why, and whether the readings disagree; refused (``no_readings``) if there is none."""
    if not repeats:
        raise Refused(
            Fault(code="no_readings", text="There is no reading to choose from", allowed="at least one reading")
        )
    method = min((repeat.method for repeat in repeats), key=lambda candidate: candidate.rank)
    places = [place for place, repeat in enumerate(repeats) if repeat.method is method]
    chosen = _middle(repeats, places)
    values = [repeats[place].value_pd for place in places]
    spread_pd = steady(max(values) - min(values), 1)
    low, high = (limits_of(value, at, method=method, direction=direction) for value in (min(values), max(values)))
    limits_pd = difference_limits_pd(low, high)
    return Agreement(
        chosen=chosen,
        value_pd=repeats[chosen].value_pd,
        spread_pd=spread_pd,
        limits_pd=limits_pd,
        reason=_reason(repeats[chosen], len(places), len(repeats)),
        notices=(_disagreement(spread_pd, limits_pd, low.provenance),) if spread_pd > limits_pd + TOLERANCE_PD else (),
    )


def _middle(repeats: Sequence[Repeat], places: list[int]) -> int:
    """The place of the middle value; of two, the one nearer zero, and of two as near, the one given first."""
    ordered = sorted(repeats[place].value_pd for place in places)
    middle = (ordered[(len(ordered) - 1) // 2], ordered[len(ordered) // 2])
    candidates = [place for place in places if repeats[place].value_pd in middle]
    return min(candidates, key=lambda place: abs(repeats[place].value_pd))


def _reason(chosen: Repeat, by_method: int, in_all: int) -> Statement:
    if in_all == 1:
        text = "It is the only reading."
    elif by_method == 1:
        text = f"It is the only reading by {chosen.method.words}, the most exact method used."
    elif by_method % 2:
        text = f"It is the middle one of {by_method} readings by {chosen.method.words}."
    else:
        text = f"Of the middle two of {by_method} readings by {chosen.method.words} it is the one nearer zero."
    return Statement(
        code="reading_chosen",
        text=text,
        provenance=CHOICE,
        facts={"value_pd": chosen.value_pd, "method": chosen.method.value, "by_method": by_method, "in_all": in_all},
    )


def _disagreement(spread_pd: float, limits_pd: float, provenance: Provenance) -> Notice:
    return Notice(
        level=Level.CAUTION,
        code="readings_disagree",
        text=(
            f"The readings differ by {spread_pd:g} Δ, more than measurement error ({limits_pd:g} Δ): "
            "measure again before planning."
        ),
        provenance=provenance,
        facts={"spread_pd": spread_pd, "limits_pd": limits_pd},
    )
