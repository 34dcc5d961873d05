"""What the engine expects, in sentences: of the plan, of what was done, and of what was done in the end."""

from __future__ import annotations

from collections.abc import Iterator

from planner.direction import direction_of
from planner.figures import pd
from planner.thresholds import same
from planner.values.operation import Effect
from planner.values.statement import Statement

UNTOLD = "Expected after the adjustment: not told; see why below."


def effect_words(effect: Effect, adjusted: Effect | None) -> Iterator[str]:
    """``adjusted`` is the effect after an adjustment that moved a suture: both are said, and the last's interval."""
    if effect.planned_residual_pd is not None:
        yield f"Expected by the plan: {residual_words(effect.planned_residual_pd)}."
        if effect.done_residual_pd is not None:
            before = ", before the adjustment" if adjusted else ""
            yield f"Expected of what was done{before}: {residual_words(effect.done_residual_pd)}."
        if adjusted:
            yield _after(adjusted)
    last, what = (adjusted, "what was done in the end") if adjusted else (effect, "what was done")
    if last.done:
        outcome = last.done
        yield (
            f"95 % interval of {what}: {residual_words(outcome.low_pd)} to {residual_words(outcome.high_pd)}; "
            f"within {pd(outcome.within_pd)} in {outcome.within_percent:g} %."
        )
    for statement in _statements(effect, adjusted):
        yield f"{statement.text} ({statement.provenance.mark})"


def residual_words(residual_pd: float) -> str:
    """``2.5 Δ of esodeviation``, ``straight``."""
    return "straight" if same(residual_pd, 0) else f"{pd(residual_pd)} of {direction_of(residual_pd).words}"


def _after(adjusted: Effect) -> str:
    if adjusted.done_residual_pd is None:
        return UNTOLD
    return f"Expected after the adjustment, of what was done in the end: {residual_words(adjusted.done_residual_pd)}."


def _statements(effect: Effect, adjusted: Effect | None) -> tuple[Statement, ...]:
    """Each once, though both views say it."""
    said = effect.statements + (adjusted.statements if adjusted else ())
    return tuple({each.text: each for each in said}.values())
