"""Why this many millimetres: from the reading to the table's figure, a sentence each."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.dosing import rounding
from planner.dosing.recipe import Recipe
from planner.dosing.rows import Amount
from planner.figures import mm, pd
from planner.provenance import Mark, Provenance
from planner.records.technique import Condition
from planner.tables import Column, Row
from planner.thresholds import exceeds, same
from planner.values.proposal import Target
from planner.values.statement import Statement
from planner.values.table_stamp import TableStamp

SHARE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="a muscle at its row's amount corrects half of the row's deviation"
)
OVERCORRECTION = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source="many aim at a small early overcorrection of intermittent exotropia; how much is the surgeon's setting",
)
BETWEEN_BANDS = Provenance(mark=Mark.HOUSE_RULE, source="nothing is interpolated between bands: the lower one holds")
SMALLER_END = Provenance(mark=Mark.HOUSE_RULE, source="of a printed range of doses the smaller end is taken")


@dataclass(frozen=True, kw_only=True)
class Asked:
    """What a dose was asked for: by which column of which source, at which row, for which deviation."""

    stamp: TableStamp
    column: Column
    recipe: Recipe
    row_pd: float
    target: Target
    overcorrection_pd: float


def explain(asked: Asked, amount: Amount, rounded_mm: float) -> tuple[Statement, ...]:
    """The steps from the reading to the table's dose."""
    return tuple(_steps(asked, amount, rounded_mm))


def _steps(asked: Asked, amount: Amount, rounded_mm: float) -> Iterator[Statement]:
    yield _reading(asked.target)
    if asked.overcorrection_pd:
        yield _overcorrection(asked)
    yield _share(asked)
    yield from _between(asked, amount) if amount.is_between else _row(asked, amount.below)
    if not same(amount.mm, rounded_mm):
        yield _rounding(amount.mm, rounded_mm)


def _reading(target: Target) -> Statement:
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


def _overcorrection(asked: Asked) -> Statement:
    dosed_pd = abs(asked.target.horizontal_pd) + asked.overcorrection_pd
    return Statement(
        code="overcorrection",
        text=f"The surgeon wants {pd(asked.overcorrection_pd)} of early overcorrection: {pd(dosed_pd)} are dosed.",
        provenance=OVERCORRECTION,
        facts={"overcorrection_pd": asked.overcorrection_pd, "dosed_pd": round(dosed_pd, 2)},
    )


_SHARES = {
    1: "One muscle does all the work: it is done at the row of twice {whole}, {row}.",
    2: "Two muscles share the work: each is done at the row of {whole}, {row}.",
    3: "Three muscles share the work: each is done at the row of two thirds of {whole}, {row}.",
    4: "Four muscles, two per eye, share the work: each is done at the row of half of {whole}, {row}.",
}


def _share(asked: Asked) -> Statement:
    facts = {"row_pd": round(asked.row_pd, 2)}
    if asked.recipe.series:
        text = f"The series gives its doses by the deviation to be corrected, {pd(asked.row_pd)}."
        return Statement(code="share", text=text, provenance=asked.stamp.provenance, facts=facts)
    whole = "that" if asked.overcorrection_pd else "the deviation"
    text = _SHARES[len(asked.recipe.moves)].format(whole=whole, row=pd(asked.row_pd))
    return Statement(code="share", text=text, provenance=SHARE, facts=facts)


def _between(asked: Asked, amount: Amount) -> Iterator[Statement]:
    below, above = amount.below, amount.above
    yield Statement(
        code="interpolation",
        text=(
            f"{_where(asked)}: between the rows {pd(below.last_pd)} ({mm(below.mm)}) and {pd(above.first_pd)} "
            f"({mm(above.mm)}) lies {mm(amount.mm)}."
        ),
        provenance=_between_rows_of(asked.stamp),
        facts={
            "below_pd": below.last_pd,
            "below_mm": below.mm,
            "above_pd": above.first_pd,
            "above_mm": above.mm,
            "mm": round(amount.mm, 4),
        },
    )
    if exceeds(above.up_to_mm, above.mm):
        yield _smaller_end(below, above)


def _row(asked: Asked, row: Row) -> Iterator[Statement]:
    said = mm(row.mm) if same(row.up_to_mm, row.mm) else f"{mm(row.mm)} to {mm(row.up_to_mm)}"
    beyond = exceeds(asked.row_pd, row.last_pd)
    last = row == asked.column.rows[-1]
    if beyond and last:
        code, text = "last_row", f"the table ends at {_name(row)}, {said}; no more is taken."
    elif row.is_band:
        code, text = "band", f"{_name(row)} says {said}."
    else:
        code, text = "row", f"{_name(row)} says {said}."
    yield Statement(
        code=code,
        text=f"{_where(asked)}: {text}",
        provenance=asked.stamp.provenance,
        facts={"from_pd": row.first_pd, "to_pd": row.last_pd, "mm": row.mm}
        if row.is_band
        else {"row_pd": row.last_pd, "mm": row.mm},
    )
    if beyond and not last:
        text = f"{pd(asked.row_pd)} lie between two bands: nothing is interpolated, the lower band holds."
        yield Statement(
            code="between_bands", text=text, provenance=BETWEEN_BANDS, facts={"row_pd": round(asked.row_pd, 2)}
        )
    if exceeds(row.up_to_mm, row.mm):
        yield _smaller_end(row, row)


def _smaller_end(below: Row, above: Row) -> Statement:
    return Statement(
        code="smaller_end",
        text=f"Print gives up to {mm(above.up_to_mm)}: the smaller end is taken.",
        provenance=SMALLER_END,
        facts={"below_up_to_mm": below.up_to_mm, "above_up_to_mm": above.up_to_mm},
    )


def _where(asked: Asked) -> str:
    return f"{asked.stamp.name}, {asked.column.heading}"


def _name(row: Row) -> str:
    return f"the band {row.first_pd:g} to {pd(row.last_pd)}" if row.is_band else f"the row {pd(row.last_pd)}"


def _between_rows_of(stamp: TableStamp) -> Provenance:
    given = stamp.provenance
    mark = Mark.FROM_MEMORY if given.mark is Mark.FROM_MEMORY else Mark.COMPUTED
    return Provenance(mark=mark, source=f"straight line between two rows of: {given.source}")


def _rounding(exact_mm: float, rounded_mm: float) -> Statement:
    return Statement(
        code="rounding",
        text=f"{mm(exact_mm)} is rounded to {mm(rounded_mm)}.",
        provenance=rounding.PROVENANCE,
        facts={"exact_mm": round(exact_mm, 4), "mm": rounded_mm},
    )
