"""How far a push brings the device's own cursor: past the records that it sent itself, so that it need not fetch them.

Positions have no gap and follow the order of commits. So where every position behind the cursor, up to some place, is
one that this very answer gives a record of the device's, the device holds all of the feed up to there. Another's record
among them ends it: from there on the device pulls.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from uuid import UUID

from clinic.ledger.models import FeedCounter
from clinic.people.role import Role
from clinic.sync import cursor as cursors
from clinic.sync import scope
from clinic.sync.pull import WHOLE_FEED
from clinic.sync.result import Result


@dataclass(frozen=True, kw_only=True)
class Progress:
    """``cursor`` is None where the push brings it nowhere; ``more`` says that the device has to pull."""

    cursor: str | None
    more: bool


NOWHERE = Progress(cursor=None, more=True)


def progress(clinic: UUID, role: Role, *, after: str, results: Sequence[Result]) -> Progress:
    """From the cursor ``after``, by ``results`` that are committed; empty and useless cursors are for the pull."""
    start = cursors.read(after) if after else None
    if start is None or start.scope != WHOLE_FEED or role not in scope.READ_EVERYTHING:
        return NOWHERE
    counter = FeedCounter.objects.filter(clinic_id=clinic, feed=start.feed).first()
    if counter is None or start.position > counter.position:
        return NOWHERE
    held = {result.position for result in results}
    reached = start.position
    while reached + 1 in held:
        reached += 1
    return Progress(cursor=str(replace(start, position=reached)), more=reached < counter.position)
