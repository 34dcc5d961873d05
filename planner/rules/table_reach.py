"""Whether the table answers the deviation, and what is counted where it does not."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import LARGEST_LAST_ROW_RESIDUAL_PD, Draft, Reach, source_of
from planner.dosing.effect import Basis
from planner.figures import mm, pd
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.tables import Column
from planner.values.statement import Level, Notice

NO_EXTRAPOLATION = Provenance(mark=Mark.HOUSE_RULE, source="no dose is made up outside the rows of a table")
SUCCESS_BAND = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="success is usually counted as a residual within 10 Δ; the last row is used within it",
)
BELOW_FIRST = Provenance(mark=Mark.HOUSE_RULE, source="proportional from the first row down to no operation")
ABOVE_LAST = Provenance(mark=Mark.HOUSE_RULE, source="no more effect is counted than the last row's")


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A stop where there is no dose, a caution where the last row stands in, and what an effect rests on."""
    name = source_of(situation, draft.recipe).stamp.name
    match draft.reach:
        case Reach.NO_COLUMN:
            yield _stop("no_column", f"{name} has no column for this operation.")
        case Reach.NOT_DERIVED:
            yield _stop("not_derived", f"{name} is used as printed, for two muscles: no other operation is derived.")
        case Reach.BELOW:
            yield _below(situation, draft)
        case Reach.BEYOND:
            yield _beyond(situation, draft)
        case Reach.LAST_ROW:
            yield _last_row(situation, draft)
    bases = [effect.basis for effect in draft.effects]
    if Basis.BELOW_FIRST_ROW in bases:
        yield Notice(
            code="effect_below_first_row",
            text=f"A dose is smaller than the first row of {name}; its effect is estimated down from that row.",
            provenance=BELOW_FIRST,
            facts={},
            level=Level.CAUTION,
        )
    if Basis.ABOVE_LAST_ROW in bases:
        yield Notice(
            code="effect_above_last_row",
            text=f"A dose is larger than the last row of {name}; no more effect than that row's is counted.",
            provenance=ABOVE_LAST,
            facts={},
            level=Level.CAUTION,
        )


def _stop(code: str, text: str, **facts: float) -> Notice:
    return Notice(code=code, text=text, provenance=NO_EXTRAPOLATION, facts=facts, level=Level.STOP)


def _columns(situation: Situation, draft: Draft) -> list[Column]:
    keys = [(situation.direction, move.form, move.operation) for move in draft.recipe.moves]
    return [situation.table.columns[key] for key in keys]


def _below(situation: Situation, draft: Draft) -> Notice:
    first_pd = max(column.first_pd for column in _columns(situation, draft))
    text = (
        f"{situation.table.stamp.name} begins at {pd(first_pd)} for this operation, which asks for the row "
        f"{pd(draft.row_pd)}: the table gives no dose."
    )
    return _stop("below_table", text, first_pd=first_pd, row_pd=round(draft.row_pd, 2))


def _beyond(situation: Situation, draft: Draft) -> Notice:
    last_pd = min(column.last_pd for column in _columns(situation, draft))
    text = (
        f"{situation.table.stamp.name} ends at {pd(last_pd)} for this operation, which asks for the row "
        f"{pd(draft.row_pd)}: the table gives no dose, for its last row would leave more than "
        f"{pd(LARGEST_LAST_ROW_RESIDUAL_PD)}."
    )
    return _stop("beyond_table", text, last_pd=last_pd, row_pd=round(draft.row_pd, 2))


def _last_row(situation: Situation, draft: Draft) -> Notice:
    ended = [
        (column, dose) for column, dose in zip(draft.columns, draft.doses, strict=True) if column.last_pd < draft.row_pd
    ]
    column, dose = min(ended, key=lambda pair: pair[0].last_pd)
    last_mm = dose.table_mm or 0.0
    text = (
        f"{situation.table.stamp.name} ends at {pd(column.last_pd)} ({column.heading}, {mm(last_mm)}); this "
        f"operation asks for the row {pd(draft.row_pd)}. The last row's dose is used."
    )
    return Notice(
        code="last_row_used",
        text=text,
        provenance=SUCCESS_BAND,
        facts={"last_pd": column.last_pd, "row_pd": round(draft.row_pd, 2), "last_mm": last_mm},
        level=Level.CAUTION,
    )
