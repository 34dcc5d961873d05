"""What the table promised for what was done: its column read backwards, as the engine does for its own options."""

from __future__ import annotations

from math import fsum

from planner.dosing.draft import PRINTED_MUSCLES
from planner.dosing.effect import effect_of
from planner.errors import Fault, Refused
from planner.exchange.notebook.families import WORK, Moved, Work
from planner.precision.steady import steady
from planner.records.notebook import CarriedCase
from planner.tables import Column, Table, table
from planner.thresholds import exceeds, reaches

LEAST_PROMISED_PD = 1.0


def promised_pd(case: CarriedCase) -> float:
    """The correction in the direction operated for; :class:`Refused` where the table has no figure for it."""
    work, chosen = WORK[case.family], table(case.table)
    if chosen.only_as_printed and work.muscles != PRINTED_MUSCLES:
        raise Refused(_no_dose(case, "This table is printed for two muscles and nothing else is derived from it."))
    columns = [(moved, _column(chosen, work, moved, case)) for moved in work.moved]
    if case.muscles is None:
        return _looked_up(case, work, [column for _, column in columns])
    near_pd = 2 * abs(case.before_pd) / work.muscles
    by_muscle = {moved.muscle: column for moved, column in columns}
    effects = (effect_of(by_muscle[each.muscle], each.mm, near_pd).pd for each in case.muscles)
    promised = steady(fsum(effects), 1)
    if not reaches(promised, LEAST_PROMISED_PD):
        raise Refused(_no_dose(case, "By this table so little would correct less than 1 prism dioptre."))
    return promised


def _looked_up(case: CarriedCase, work: Work, columns: list[Column]) -> float:
    """The deviation that the table was looked up at, if its rows reach there."""
    looked_up = case.table_dose_pd or 0.0
    row_pd = 2 * looked_up / work.muscles
    low = max(column.first_pd for column in columns)
    high = min(column.last_pd for column in columns)
    if exceeds(low, row_pd) or exceeds(row_pd, high):
        scale = work.muscles / 2
        raise Refused(
            Fault(
                code="outside_table",
                text="The table has no dose for this deviation.",
                field="table_dose_pd",
                value=f"{looked_up:g}",
                allowed=f"{low * scale:g} to {high * scale:g} prism dioptres in {case.table}",
            )
        )
    return steady(looked_up, 1)


def _column(chosen: Table, work: Work, moved: Moved, case: CarriedCase) -> Column:
    column = chosen.columns.get((work.direction, moved.form, moved.operation))
    if column is None:
        text = f"The table prints no figures to {moved.operation} the {moved.muscle.words} in this operation."
        raise Refused(_no_dose(case, text))
    return column


def _no_dose(case: CarriedCase, text: str) -> Fault:
    return Fault(code="no_table_dose", text=text, field="table", value=case.table, allowed="a table that doses this")
