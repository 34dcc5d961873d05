"""What the parts do together to each kind of deviation."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import fsum, sqrt

from planner.anatomy import Eye
from planner.figures import pd
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.values.option import Answers, Expected, Option, Unit
from planner.values.statement import Statement

TOGETHER = Provenance(
    mark=Mark.COMPUTED, source="corrections add, and so do the variances where they are published; nothing else known"
)


def together(parts: Sequence[Option]) -> tuple[Expected, ...]:
    """One entry for each kind of deviation and eye."""
    found: dict[tuple[Answers, Eye | None], list[Expected]] = {}
    for part in parts:
        for each in part.expected:
            found.setdefault((each.answers, each.eye), []).append(each)
    return tuple(each[0] if len(each) == 1 else _summed(each) for each in found.values())


def _summed(several: list[Expected]) -> Expected:
    first = several[0]
    corrections = [each.correction for each in several]
    known = [correction for correction in corrections if correction is not None]
    before = f"{len(several)} operations for the same deviation of {_size(abs(first.before), first.unit)}"
    if len(known) < len(several):
        return replace(
            first,
            correction=None,
            residual=None,
            spread=None,
            statement=_said(first, f"{before}: for one of them no correction is published, so neither is the sum."),
        )
    correction = steady(fsum(known), 1)
    spreads = [each.spread for each in several if each.spread is not None]
    spread = steady(sqrt(fsum(each**2 for each in spreads)), 1) if len(spreads) == len(several) else None
    residual = steady(first.before - correction, 1)
    over = residual * first.before < 0
    size = _size(abs(residual), first.unit)
    leaves = f"which overdoes it by {size}" if over else f"which leaves {size}"
    text = f"{before}: {_size(abs(correction), first.unit)} less are expected together, {leaves}."
    return replace(first, correction=correction, residual=residual, spread=spread, statement=_said(first, text))


def _said(first: Expected, text: str) -> Statement:
    return Statement(
        code=f"{first.answers}_together" + (f"-{first.eye}" if first.eye else ""),
        text=text,
        provenance=TOGETHER,
        facts={},
    )


def _size(figure: float, unit: Unit) -> str:
    return pd(figure) if unit is Unit.PRISM_DIOPTRES else f"{figure:g} degrees"
