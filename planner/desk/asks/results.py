"""What became of operations, group by group."""

from __future__ import annotations

from planner.codec import read, write
from planner.desk.asks.watching import refuse_blind_watch
from planner.desk.fields import Fields
from planner.results import Reporting, report_groups


def ask(fields: Fields) -> object:
    """``[GroupReport]``; refused where the watch would expect no fewer failures than it calls worse."""
    asked = read(Reporting, fields)
    refuse_blind_watch(asked)
    return [write(group) for group in report_groups(asked)]
