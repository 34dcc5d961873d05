"""The most that is conventionally done to a muscle."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.figures import mm
from planner.maxima import CONVENTIONAL, MAXIMA
from planner.rules.alike import Alike, alike
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.statement import Level, Notice


def notices(_situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution above the usual maximum, a stop above the widest."""
    for each in alike(draft.doses):
        maximum = MAXIMA[each.muscle, each.operation]
        if exceeds(each.mm, maximum.widest_mm):
            yield _notice(each, Level.STOP, maximum.widest_mm, "the widest maximum")
        elif exceeds(each.mm, maximum.usual_mm):
            widest = f"; {mm(maximum.widest_mm)} is the widest taught {maximum.why}".rstrip()
            yield _notice(each, Level.CAUTION, maximum.usual_mm, "the usual maximum", widest)


def _notice(each: Alike, level: Level, limit_mm: float, name: str, widest: str = "") -> Notice:
    return Notice(
        code=f"{'above_widest_maximum' if level is Level.STOP else 'above_usual_maximum'}-{each.tag}",
        text=f"{each.where}: a {each.what} is above {name} of {mm(limit_mm)}{widest}.",
        provenance=CONVENTIONAL,
        facts={"muscle": each.muscle.value, "operation": each.operation.value, "mm": each.mm, "limit_mm": limit_mm},
        level=level,
    )
