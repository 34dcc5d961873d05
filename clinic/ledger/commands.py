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
from clinic.ledger.rows import insert

OF_A_RECORD = (
    "id", "clinic", "position", "kind", "patient", "author", "device", "recorded_at", "body", "digest", "about",
    "received_at",
)  # fmt: skip


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


def end_of_feed(clinic: UUID) -> int | None:
    """The position of the clinic's last record, without a lock; None while the clinic has no feed."""
    return FeedCounter.objects.filter(clinic_id=clinic).values_list("position", flat=True).first()


def append(feed: FeedCounter, entries: Sequence[Entry], *, received_at: datetime) -> range:
    """Insert the entries; the positions that they got. ``feed`` comes from :func:`lock_feed` in this transaction.

    Raises IntegrityError when an id is taken or a superseded record does not exist.
    """
    if not transaction.get_connection().in_atomic_block:
        raise transaction.TransactionManagementError("append belongs into the transaction that locked the feed")
    positions = range(feed.position + 1, feed.position + 1 + len(entries))
    if not entries:
        return positions
    insert(
        Record,
        OF_A_RECORD,
        (
            (
                entry.id,
                feed.clinic_id,
                position,
                entry.kind,
                entry.patient,
                entry.author,
                entry.device,
                entry.recorded_at,
                entry.body,
                entry.digest,
                entry.about,
                received_at,
            )
            for position, entry in zip(positions, entries, strict=True)
        ),
    )
    links = [(entry.id, superseded) for entry in entries for superseded in entry.supersedes]
    if links:
        insert(Supersession, ("record", "superseded"), links)
    feed.position = positions.stop - 1
    feed.save(update_fields=["position"])
    return positions


@transaction.atomic
def renew_feed(clinic: UUID) -> UUID:
    """Give the clinic's feed a new id, so that every device pulls afresh: after a restored backup."""
    feed = lock_feed(clinic)
    feed.feed = uuid.uuid4()
    feed.save(update_fields=["feed"])
    return feed.feed
