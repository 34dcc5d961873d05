"""The most that is conventionally done to a muscle."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft, source_of
from planner.figures import mm
from planner.maxima import CONVENTIONAL, maximum_of
from planner.records.dose_table import OwnMaximum
from planner.rules.alike import Alike, alike
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.statement import Level, Notice
from planner.values.table_stamp import TableStamp


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution above the usual maximum, a stop above the widest; a caution where the source itself did as much."""
    source = source_of(situation, draft.recipe)
    for each in alike(draft.doses):
        maximum = maximum_of(each.muscle, each.operation, draft.recipe.family)
        if maximum is None:
            continue
        own = source.maxima.get((each.muscle, each.operation))
        if own and exceeds(each.mm, maximum.widest_mm) and not exceeds(each.mm, own.mm):
            yield _as_the_source_did(each, maximum.widest_mm, own, source.stamp)
        elif exceeds(each.mm, maximum.widest_mm):
            yield _notice(each, Level.STOP, maximum.widest_mm, "the widest maximum")
        elif exceeds(each.mm, maximum.usual_mm):
            widest = f"; {mm(maximum.widest_mm)} is the widest taught {maximum.why}".rstrip()
            yield _notice(each, Level.CAUTION, maximum.usual_mm, "the usual maximum", widest)


def _as_the_source_did(each: Alike, widest_mm: float, own: OwnMaximum, stamp: TableStamp) -> Notice:
    return Notice(
        code=f"beyond_conventional_maximum-{each.tag}",
        text=(
            f"{each.where}: a {each.what} is above the widest conventional maximum of {mm(widest_mm)}; "
            f"{stamp.name} goes to {mm(own.mm)}, {own.reason}."
        ),
        provenance=stamp.provenance,
        facts={
            "muscle": each.muscle.value,
            "operation": each.operation.value,
            "mm": each.mm,
            "limit_mm": widest_mm,
            "source_mm": own.mm,
        },
        level=Level.CAUTION,
    )


def _notice(each: Alike, level: Level, limit_mm: float, name: str, widest: str = "") -> Notice:
    return Notice(
        code=f"{'above_widest_maximum' if level is Level.STOP else 'above_usual_maximum'}-{each.tag}",
        text=f"{each.where}: a {each.what} is above {name} of {mm(limit_mm)}{widest}.",
        provenance=CONVENTIONAL,
        facts={"muscle": each.muscle.value, "operation": each.operation.value, "mm": each.mm, "limit_mm": limit_mm},
        level=level,
    )
