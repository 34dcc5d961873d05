"""The operation note: what was done, beside what was planned, with every stop and caution.

:func:`note` makes the value; :func:`planner.operation.note.pdf.pdf` draws it, in a room of its own so that the value
can be made without ReportLab.
"""

from planner.operation.note.making import Pieces, note

__all__ = ["Pieces", "note"]
