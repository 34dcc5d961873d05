"""Why this many millimetres: from the reading to the ruler, a sentence each."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, INSERTION_PROVENANCE, Muscle
from planner.dosing import rounding
from planner.dosing.recipe import Move
from planner.dosing.rows import Amount
from planner.figures import mm, pd
from planner.provenance import Mark, Provenance
from planner.records.technique import Condition
from planner.tables import Column, Table
from planner.thresholds import exceeds, same
from planner.values.option import Operation
from planner.values.proposal import Target
from planner.values.statement import Statement

SHARE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="a muscle at its row's amount corrects half of the row's deviation"
)
SURGEON = Provenance(mark=Mark.HOUSE_RULE, source="the surgeon's figure counts; the table's stays beside it")


@dataclass(frozen=True, kw_only=True)
class Asked:
    """What a dose was asked for: which move, by which column of which table, at which row, for which deviation."""

    table: Table
    column: Column
    move: Move
    row_pd: float
    target: Target


def explain(asked: Asked, amount: Amount, rounded_mm: float) -> tuple[Statement, ...]:
    """The steps from the reading to the table's dose."""
    found = (_reading(asked), _share(asked), _row(asked, amount))
    return found if same(amount.mm, rounded_mm) else (*found, _rounding(amount.mm, rounded_mm))


def changed(table_mm: float, mm_set: float) -> Statement:
    """The surgeon set another dose."""
    return Statement(
        code="changed",
        text=f"The surgeon set {mm(mm_set)}; the table says {mm(table_mm)}.",
        provenance=SURGEON,
        facts={"table_mm": table_mm, "mm": mm_set},
    )


def _reading(asked: Asked) -> Statement:
    target = asked.target
    reading, deviation_pd = target.reading, target.horizontal_pd
    sense = "Eso" if deviation_pd > 0 else "Exo"
    how = f"primary position, {reading.range}, {reading.correction} correction"
    how = how if reading.condition is Condition.PLAIN else f"{how}, {reading.condition}"
    read = "" if same(deviation_pd, target.raw_pd) else f" (read as {pd(target.raw_pd)})"
    return Statement(
        code="reading",
        text=f"{sense} {pd(deviation_pd)}{read}, {how}.",
        provenance=Provenance(mark=Mark.MEASURED, source=f"{reading.method.words} of this examination"),
        facts={"horizontal_pd": deviation_pd, "raw_pd": target.raw_pd},
    )


_SHARES = {
    0.5: "Four muscles, two per eye, share the work: each is done at the row of half the deviation, {row}.",
    1.0: "Two muscles share the work: each is done at the row of the deviation, {row}.",
    2.0: "One muscle does all the work: it is done at the row of twice the deviation, {row}.",
}
_THREE = "Three muscles share the work: each is done at the row of two thirds of the deviation, {row}."


def _share(asked: Asked) -> Statement:
    ratio = asked.row_pd / abs(asked.target.horizontal_pd)
    words = next((text for share, text in _SHARES.items() if same(share, ratio)), _THREE)
    return Statement(
        code="share",
        text=words.format(row=pd(asked.row_pd)),
        provenance=SHARE,
        facts={"row_pd": round(asked.row_pd, 2)},
    )


def _row(asked: Asked, amount: Amount) -> Statement:
    where = f"{asked.table.stamp.name}, {asked.column.heading}"
    (below_pd, below_mm), (above_pd, above_mm) = amount.below, amount.above
    if amount.is_between:
        return Statement(
            code="interpolation",
            text=f"{where}: between the rows {pd(below_pd)} ({mm(below_mm)}) and {pd(above_pd)} ({mm(above_mm)}) lies "
            f"{mm(amount.mm)}.",
            provenance=_between_rows_of(asked.table),
            facts={
                "below_pd": below_pd,
                "below_mm": below_mm,
                "above_pd": above_pd,
                "above_mm": above_mm,
                "mm": round(amount.mm, 4),
            },
        )
    if exceeds(asked.row_pd, below_pd):
        return Statement(
            code="last_row",
            text=f"{where}: the table ends at the row {pd(below_pd)}, {mm(below_mm)}; no more is taken.",
            provenance=asked.table.provenance,
            facts={"row_pd": below_pd, "mm": below_mm},
        )
    return Statement(
        code="row",
        text=f"{where}: the row {pd(below_pd)} says {mm(below_mm)}.",
        provenance=asked.table.provenance,
        facts={"row_pd": below_pd, "mm": below_mm},
    )


def _between_rows_of(table: Table) -> Provenance:
    given = table.provenance
    mark = Mark.FROM_MEMORY if given.mark is Mark.FROM_MEMORY else Mark.COMPUTED
    return Provenance(mark=mark, source=f"straight line between two rows of: {given.source}")


def _rounding(exact_mm: float, rounded_mm: float) -> Statement:
    return Statement(
        code="rounding",
        text=f"{mm(exact_mm)} is rounded to {mm(rounded_mm)}.",
        provenance=rounding.PROVENANCE,
        facts={"exact_mm": round(exact_mm, 4), "mm": rounded_mm},
    )


def limbus(muscle: Muscle, operation: Operation, dose_mm: float) -> Statement:
    """Where the muscle ends up, from the limbus."""
    insertion_mm = INSERTION_FROM_LIMBUS_MM[muscle]
    if operation is Operation.RECESS:
        text = f"{mm(insertion_mm)} from the limbus to the insertion and {mm(dose_mm)} behind it."
    else:
        text = f"Reattached at the insertion, {mm(insertion_mm)} from the limbus."
    return Statement(code="limbus", text=text, provenance=INSERTION_PROVENANCE, facts={"insertion_mm": insertion_mm})
