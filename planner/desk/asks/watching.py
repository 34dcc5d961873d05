"""What a watch over failures can tell apart."""

from __future__ import annotations

from planner.errors import Fault, Refused
from planner.results import Reporting


def refuse_blind_watch(asked: Reporting) -> None:
    """:class:`Refused` where it would expect no fewer failures than it calls worse."""
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
