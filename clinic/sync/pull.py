"""Records out of the ledger, in feed order, so that none is ever missed.

The counter is read first. Its committed value says that every record up to it is committed and visible to the reads
that follow (:mod:`clinic.ledger.commands`), so the page and the cursor speak of nothing beyond it.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from uuid import UUID

from clinic.ledger.models import FeedCounter, Record
from clinic.people.role import Role
from clinic.sync import cursor as cursors
from clinic.sync import scope
from clinic.sync.cursor import Cursor
from clinic.sync.envelope import of_record
from clinic.sync.receipt import receipt_of

WHOLE_FEED = "all"


@dataclass(frozen=True, kw_only=True)
class Page:
    """One answer; with ``reset`` it has no records and an empty cursor.

    ``restored`` says that the ledger may lack what the device has: the cursor is not one of this ledger's history.
    """

    records: tuple[Record, ...]
    cursor: str
    more: bool
    reset: bool = False
    restored: bool = False
    removed: tuple[UUID, ...] = ()


ANOTHER_SCOPE = Page(records=(), cursor="", more=True, reset=True)
ANOTHER_HISTORY = replace(ANOTHER_SCOPE, restored=True)


def pull(clinic: UUID, role: Role, *, after: str, limit: int, now: datetime) -> Page:
    """The page after the cursor ``after``; an empty one begins at the beginning."""
    counter, _ = FeedCounter.objects.get_or_create(clinic_id=clinic)
    everything = role in scope.READ_EVERYTHING
    scope_name = WHOLE_FEED if everything else scope.name()
    start = Cursor(feed=counter.feed, scope=scope_name, position=0)
    cursor = cursors.read(after) if after else start
    if cursor is None or cursor.feed != start.feed or cursor.position > counter.position:
        return ANOTHER_HISTORY
    if cursor.scope != start.scope:
        return ANOTHER_SCOPE
    if everything:
        return _of_everything(clinic, cursor, counter.position, limit)
    return _of_theatre(clinic, cursor, counter.position, limit, now)


def _of_everything(clinic: UUID, cursor: Cursor, up_to: int, limit: int) -> Page:
    records = tuple(
        Record.objects.filter(clinic=clinic, position__gt=cursor.position, position__lte=up_to)
        .prefetch_related("supersessions")
        .order_by("position")[:limit]
    )
    reached = records[-1].position if len(records) == limit else up_to
    return Page(records=records, cursor=_at(cursor, reached), more=reached < up_to)


def _of_theatre(clinic: UUID, cursor: Cursor, up_to: int, limit: int, now: datetime) -> Page:
    """A page, and what has left the scope since the cursor's moment. The moment goes on only when something did."""
    since = datetime.fromtimestamp(cursor.moment, UTC)
    removed = scope.left(clinic, up_to=up_to, since=since, now=now) if cursor.moment else frozenset()
    if removed or not cursor.moment:
        cursor = replace(cursor, moment=int(now.timestamp()))
    if cursor.position == up_to:
        return Page(records=(), cursor=str(cursor), more=False, removed=tuple(sorted(removed)))
    if cursor.position:
        removed |= scope.parted(clinic, beyond=cursor.position, up_to=up_to, now=now)
    places = scope.places(clinic, up_to=up_to, now=now, beyond=cursor.position)
    ahead = sorted((place, record) for record, place in places.items() if place > cursor.position)
    wanted = ahead[:limit]
    reached = wanted[-1][0] if len(wanted) == limit else up_to
    # What one record opened stays together, since a cursor cannot stand in the middle of it.
    wanted += [item for item in ahead[limit:] if item[0] == reached]
    records = Record.objects.prefetch_related("supersessions").in_bulk([record for _, record in wanted])
    ordered = sorted(records.values(), key=lambda record: (places[record.pk], record.position))
    return Page(
        records=tuple(ordered),
        cursor=_at(cursor, reached),
        more=reached < up_to,
        removed=tuple(sorted(removed)),
    )


def _at(cursor: Cursor, position: int) -> str:
    return str(replace(cursor, position=position))


def written(records: Sequence[Record]) -> str:
    """The records as a JSON list; each body is written as the canonical text that it is stored as."""
    return f"[{','.join(map(_written, records))}]"


def _written(record: Record) -> str:
    envelope = of_record(record)
    facts = {
        "id": envelope.id,
        "kind": envelope.kind,
        "clinic": envelope.clinic,
        "patient": envelope.patient,
        "author": envelope.author,
        "device": envelope.device,
        "recorded_at": envelope.recorded_at,
        "supersedes": envelope.supersedes,
        "digest": envelope.digest,
        "position": record.position,
        "received_at": record.received_at.isoformat(),
        "receipt": receipt_of(envelope),
    }
    return f'{json.dumps(facts, ensure_ascii=False)[:-1]}, "body": {record.body}}}'
