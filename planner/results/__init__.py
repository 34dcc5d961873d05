"""What became of operations: named definitions of success, counted honestly, with exact intervals.

``result``       one operation and what was seen of it afterwards
``definitions``  one module per published or usual definition of success; several are told at once
``window``       the days of the visits that count
``report``       a group of results as figures: seen and missing, success, residual, how long it lasts
``lasting``      for how long they stay within 10 Δ: who is followed, from when, until when
``grouping``     by surgeon, family, table or diagnosis

A missing visit is counted and never dropped: beside the share of those judged stand the shares if all others had
failed, or had succeeded. Whoever was operated again by the last day of the window is judged, as a failure. Small
numbers are said to be small. No definition is this project's own.
"""

from planner.results.grouping import GroupReport, Reporting, report_groups

__all__ = ["GroupReport", "Reporting", "report_groups"]
