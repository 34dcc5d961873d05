"""A family's cases, answered: what was learned, how sure it is, and in words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from planner.calibration.admission import Question, admitted, counted, left_out
from planner.calibration.past import Past, told_without_itself
from planner.calibration.posterior import (
    FARTHEST_SD,
    LEAST_EFFECT,
    MOST_EFFECT,
    Interval,
    Posterior,
    learn,
)
from planner.calibration.prior import WEIGHTS, Prior, prior
from planner.calibration.scatter import DIFFERENCE_PD, READINGS, REFERENCE_PD
from planner.provenance import Mark, Provenance
from planner.values.statement import Statement

ENOUGH_CASES: Final = 10
"""With fewer, nothing is suggested."""
BOUNDS = Provenance(
    mark=Mark.HOUSE_RULE,
    source=(
        f"no suggestion below {ENOUGH_CASES} cases; the effect stays within {LEAST_EFFECT:g} and {MOST_EFFECT:g}; "
        f"no ratio counts as farther than {FARTHEST_SD:g} SD from the table"
    ),
)
CONJUGATE = Provenance(mark=Mark.COMPUTED, source="normal and inverse gamma, in closed form")


@dataclass(frozen=True, kw_only=True)
class Calibration:
    """What is learned for a family of operations.

    ``effect`` is what one's own operations do per unit of what the table promises, with its 95 % interval;
    ``next_case`` where the next case's ratio lies in 95 of 100 at the reference angle. ``look_up_factor`` is null with
    too few cases; otherwise the table is looked up at the deviation times this figure. It is a second opinion: the
    table's own dose stays beside it.
    """

    family: str
    cases: int
    effect: Interval
    next_case: Interval
    look_up_factor: float | None
    past: Past
    statements: tuple[Statement, ...]


def posterior(question: Question) -> Posterior:
    """What the cases that may teach make of the prior of their family."""
    return learn(prior(question.family), admitted(question))


def calibrate(question: Question) -> Calibration:
    """Learns from the cases that may teach."""
    learned = posterior(question)
    before = learned.before
    enough = learned.cases >= ENOUGH_CASES
    past = told_without_itself(before, admitted(question))
    return Calibration(
        family=question.family,
        cases=learned.cases,
        effect=learned.effect_interval(),
        next_case=learned.next_case(REFERENCE_PD),
        look_up_factor=1 / learned.effect if enough else None,
        past=past,
        statements=(*_said(before, learned), *_compared(past), counted(question.window), *left_out(question)),
    )


def _said(before: Prior, learned: Posterior) -> Iterator[Statement]:
    source = before.spread.provenance.source
    yield Statement(
        code="calibration_starts",
        text=f"Starts from the table; the scatter is that published for {before.spread.words} ({source}).",
        provenance=WEIGHTS,
        facts={"sd": before.sd, "spread": before.spread.id},
    )
    yield Statement(
        code="calibration_weighed",
        text=(
            f"Two readings alone differ by up to {DIFFERENCE_PD:g} Δ in 95 of 100, which is more of a small angle than "
            "of a large one: a case of a small angle counts less, and the next one there is told less exactly."
        ),
        provenance=READINGS,
        facts={"difference_pd": DIFFERENCE_PD},
    )
    interval = learned.effect_interval()
    yield Statement(
        code="calibration_learned",
        text=(
            f"Your own {learned.cases} cases did {100 * interval.middle:.0f} % of what the table promises, "
            f"95 % interval {100 * interval.low:.0f} to {100 * interval.high:.0f} %."
        ),
        provenance=CONJUGATE,
        facts={"cases": learned.cases, "effect": interval.middle, "low": interval.low, "high": interval.high},
    )
    if learned.cases < ENOUGH_CASES:
        yield Statement(
            code="calibration_too_few",
            text=f"Too few cases to suggest anything: {learned.cases} of at least {ENOUGH_CASES}.",
            provenance=BOUNDS,
            facts={"cases": learned.cases, "enough": ENOUGH_CASES},
        )
    if learned.effect != learned.mean:
        yield Statement(
            code="calibration_bounded",
            text=f"Held at {100 * learned.effect:.0f} %, as far as it may go from the table. Look at the cases first.",
            provenance=BOUNDS,
            facts={"effect": learned.effect, "mean": learned.mean},
        )
    if learned.held:
        yield Statement(
            code="calibration_outliers",
            text=f"Cases far from the table, counted as less far: {learned.held}.",
            provenance=BOUNDS,
            facts={"cases": learned.held},
        )


def _compared(past: Past) -> Iterator[Statement]:
    if past.table_missed_pd is None or past.own_missed_pd is None:
        return
    yield Statement(
        code="calibration_on_past_cases",
        text=(
            f"On your past cases, each told by the others: the table missed by {past.table_missed_pd:.1f} Δ, "
            f"your own effect by {past.own_missed_pd:.1f} Δ (root mean square)."
        ),
        provenance=CONJUGATE,
        facts={"table_missed_pd": past.table_missed_pd, "own_missed_pd": past.own_missed_pd},
    )
