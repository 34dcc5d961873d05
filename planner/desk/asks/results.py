"""What became of operations, group by group."""

from __future__ import annotations

from planner.codec import read, write
from planner.desk.fields import Fields
from planner.errors import Fault, Refused
from planner.results import Reporting, report_groups


def ask(fields: Fields) -> object:
    """``[GroupReport]``; refused where the watch would expect no fewer failures than it calls worse."""
    asked = read(Reporting, fields)
    if asked.failures_worse <= asked.failures_expected:
        raise Refused(
            Fault(
                code="watch_cannot_tell",
                text="What is worse must be more than what is expected.",
                field="failures_worse",
                value=f"{asked.failures_worse:g}",
                allowed=f"more than {asked.failures_expected:g}",
            )
        )
    return [write(group) for group in report_groups(asked)]
