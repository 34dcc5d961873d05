"""The dose tables: one TOML file each, with its provenance; adding one is adding a file.

A file holds a :class:`planner.records.dose_table.DoseTable`: the rows as printed, and where they come from. It is read
by the strict codec and then checked as a table (:mod:`planner.tables.checks`): a bad one is refused, the row named.

:func:`table` gives one by its id, :func:`tables` all of them.
"""

from planner.tables.shelf import read_table, table, tables
from planner.tables.table import Column, Form, Table

__all__ = ["Column", "Form", "Table", "read_table", "table", "tables"]
