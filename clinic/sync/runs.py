"""Runs of the feed that a push filled: whoever stands where one begins need not fetch back what it sent itself.

Positions have no gap and follow the order of commits. So where the answer to a push gives its records all positions
from one place of the feed to another, a device that holds everything up to the first place holds everything up to the
second. Another's record among them parts one run from the next, and a device that stands there pulls.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from uuid import UUID

from clinic.ledger.models import FeedCounter
from clinic.people.role import Role
from clinic.sync import scope
from clinic.sync.cursor import Cursor
from clinic.sync.pull import WHOLE_FEED
from clinic.sync.result import Result


@dataclass(frozen=True, kw_only=True)
class Run:
    """From the cursor ``after`` to ``cursor``; ``more`` says that the feed went on when the answer was made."""

    after: str
    cursor: str
    more: bool


def runs(clinic: UUID, role: Role, results: Sequence[Result]) -> list[Run]:
    """Of ``results`` that are committed, the first first; none for a role that is handed a part of the feed."""
    positions = sorted({result.position for result in results if result.position is not None})
    if not positions or role not in scope.READ_EVERYTHING:
        return []
    counter = FeedCounter.objects.get(clinic_id=clinic)
    start = Cursor(feed=counter.feed, scope=WHOLE_FEED, position=0)
    return [
        Run(
            after=str(replace(start, position=first - 1)),
            cursor=str(replace(start, position=last)),
            more=last < counter.position,
        )
        for first, last in _without_gap(positions)
    ]


def _without_gap(positions: Iterable[int]) -> list[tuple[int, int]]:
    found: list[tuple[int, int]] = []
    for position in positions:
        if found and found[-1][1] + 1 == position:
            found[-1] = found[-1][0], position
        else:
            found.append((position, position))
    return found
