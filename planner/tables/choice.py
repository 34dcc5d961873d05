"""Which table a case is dosed by."""

from __future__ import annotations

from dataclasses import replace

from planner.errors import Fault, Refused
from planner.records.dose_table import DoseTable
from planner.tables.clinics_own import clinics_own
from planner.tables.shelf import table
from planner.tables.table import Table


def chosen(table_id: str, own: DoseTable | None) -> Table:
    """The table of that id, which is ``own`` where a clinic brings one.

    :class:`Refused` with ``unknown_table``, with ``other_table`` where ``own`` is not the one named, and with all that
    is wrong with ``own``, fields beginning with ``clinic_table``.
    """
    if own is None:
        return table(table_id)
    if own.id != table_id:
        text = "The clinic's table that comes with the case is not the one that the case names."
        raise Refused(Fault(code="other_table", text=text, field="clinic_table.id", value=own.id, allowed=table_id))
    try:
        return clinics_own(own)
    except Refused as refusal:
        faults = (replace(fault, field=f"clinic_table.{fault.field}") for fault in refusal.faults)
        raise Refused(*faults) from None
