"""The one way to write: lock the clinic's feed, append entries, commit.

Why no reader can miss a record: positions come from the clinic's one counter row, which the writer locks before it
takes the first position and keeps locked until its transaction commits. The next writer waits, so a higher position is
never visible before a lower one, and the counter's committed value says that every record up to it is committed. On
PostgreSQL the lock is ``SELECT ... FOR UPDATE``; on SQLite it is the database's one write lock, which ``IMMEDIATE``
transactions take when they begin.
"""

from __future__ import annotations

import uuid
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from django.db import transaction

from clinic.ledger.models import FeedCounter, Record, Supersession


@dataclass(frozen=True, kw_only=True)
class Entry:
    """What a device recorded, found good, and not yet in the ledger.

    ``body`` is canonical JSON text and ``digest`` its SHA-256; ``author`` is the account's name; ``about`` is the one
    record that this one speaks of, if its kind speaks of one.
    """

    id: UUID
    kind: str
    patient: UUID
    author: str
    device: UUID
    recorded_at: str
    supersedes: tuple[UUID, ...]
    body: str
    digest: str
    about: UUID | None = None


def lock_feed(clinic: UUID) -> FeedCounter:
    """The clinic's counter, locked until the surrounding transaction ends; made when the clinic has none yet."""
    locked = FeedCounter.objects.select_for_update().filter(clinic_id=clinic)
    feed = locked.first()
    if feed is None:
        FeedCounter.objects.get_or_create(clinic_id=clinic)
        feed = locked.get()
    return feed


def append(feed: FeedCounter, entries: Sequence[Entry], *, received_at: datetime) -> list[Record]:
    """Give each entry the next position and insert it; ``feed`` comes from :func:`lock_feed` in this transaction.

    Raises IntegrityError when an id is taken or a superseded record does not exist.
    """
    if not transaction.get_connection().in_atomic_block:
        raise transaction.TransactionManagementError("append belongs into the transaction that locked the feed")
    records = [
        Record(
            id=entry.id,
            clinic_id=feed.clinic_id,
            position=feed.position + place,
            kind=entry.kind,
            patient=entry.patient,
            author_id=entry.author,
            device=entry.device,
            recorded_at=entry.recorded_at,
            body=entry.body,
            digest=entry.digest,
            about_id=entry.about,
            received_at=received_at,
        )
        for place, entry in enumerate(entries, start=1)
    ]
    Record.objects.bulk_create(records)
    Supersession.objects.bulk_create(
        Supersession(record_id=entry.id, superseded_id=superseded)
        for entry in entries
        for superseded in entry.supersedes
    )
    feed.position += len(records)
    feed.save(update_fields=["position"])
    return records


@transaction.atomic
def renew_feed(clinic: UUID) -> UUID:
    """Give the clinic's feed a new id, so that every device pulls afresh: after a restored backup."""
    feed = lock_feed(clinic)
    feed.feed = uuid.uuid4()
    feed.save(update_fields=["feed"])
    return feed.feed
