"""Records into the ledger, each once, whatever happens to the answer.

A batch is settled in three steps:

1. Records that are in the ledger already are answered from it, without a lock: the usual case after a lost reply.
2. The others are examined by themselves (:func:`clinic.sync.judge.examine`), still without a lock, for this may take
   the engine's time.
3. One transaction locks the feed, looks again for the ids if the feed went on meanwhile (another device or a second tab
   may have been faster), admits record by record, and inserts what was admitted with one statement.

A savepoint for each record would let the database find faults one by one; here they are found before anything is
inserted, so a batch costs a fixed number of statements. Where the database objects all the same (an id that another
clinic took at this very moment), the transaction is rolled back as a whole and the records are settled one by one, each
looked for again and in a transaction of its own, so that one of them can never hold up the rest.
"""

from __future__ import annotations

import logging
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any
from uuid import UUID

from django.db import DataError, IntegrityError, transaction

from clinic.ledger import commands
from clinic.ledger.commands import Entry
from clinic.ledger.models import Record
from clinic.sync import judge
from clinic.sync.envelope import Envelope, Pushed, as_uuid, of_record, split, told_id
from clinic.sync.kinds.kind import Incoming
from clinic.sync.known import load
from clinic.sync.receipt import receipt_of
from clinic.sync.result import Rejected, Result, Status, rejected, stored
from clinic.sync.sender import Sender

log = logging.getLogger(__name__)

Waiting = dict[int, tuple[Envelope, Incoming[Any]]]
"""Records on their way in, by their place in the batch."""


def push(clinic: UUID, sender: Sender, records: Sequence[object], *, now: datetime) -> list[Result]:
    """One result per record, in order; what is called accepted is committed.

    ``records`` are JSON values, or :class:`Pushed` where they were read already (:mod:`clinic.sync.parcel`).
    """
    results: dict[int, Result] = {}
    read: dict[int, Pushed] = {}
    for place, raw in enumerate(records):
        try:
            read[place] = _of(clinic, raw if isinstance(raw, Pushed) else split(raw))
        except Rejected as why:
            results[place] = rejected(told_id(raw), why)
    seen = commands.end_of_feed(clinic)  # before the look, so that what stands there by then was seen by it
    there = _stored(pushed.envelope for pushed in read.values())
    waiting: Waiting = {}
    for place, pushed in read.items():
        envelope = pushed.envelope
        if envelope.id in there:
            results[place] = _compare(envelope, there[envelope.id])
            continue
        try:
            waiting[place] = envelope, judge.examine(clinic, sender, pushed, now=now)
        except Rejected as why:
            results[place] = rejected(envelope.id, why)
        except Exception:  # noqa: BLE001 - one record that the server stumbles over must not take the others with it
            results[place] = _stumbled(envelope)
    results |= _settle(clinic, waiting, seen, now)
    return [results[place] for place in range(len(records))]


def _of(clinic: UUID, pushed: Pushed) -> Pushed:
    """Before anything is looked up: another clinic's record has no position here, though it be in the ledger."""
    if pushed.envelope.clinic != str(clinic):
        raise Rejected("clinic_differs", "The record belongs to another clinic.", field="clinic")
    return pushed


def _settle(clinic: UUID, waiting: Waiting, seen: int | None, now: datetime) -> dict[int, Result]:
    if not waiting:
        return {}
    try:
        return _settle_together(clinic, waiting, seen, now)
    except (IntegrityError, DataError):
        log.warning("a batch of %d is settled one by one", len(waiting))
        return {
            place: result
            for place, one in waiting.items()
            for place, result in _settle_alone(clinic, place, one, now).items()
        }


def _settle_alone(clinic: UUID, place: int, one: tuple[Envelope, Incoming[Any]], now: datetime) -> dict[int, Result]:
    try:
        return _settle_together(clinic, {place: one}, None, now)
    except (IntegrityError, DataError):
        return {place: _stumbled(one[0])}


@transaction.atomic
def _settle_together(clinic: UUID, waiting: Waiting, seen: int | None, now: datetime) -> dict[int, Result]:
    """``seen`` is the end of the feed when the records were looked for; None where that look cannot be relied on."""
    feed = commands.lock_feed(clinic)
    there = {} if feed.position == seen else _stored(envelope for envelope, _ in waiting.values())
    incomings = [incoming for _, incoming in waiting.values()]
    new = {incoming.entry.id for envelope, incoming in waiting.values() if envelope.id not in there}
    known = load(
        clinic,
        set().union(*map(judge.references, incomings)) - new,  # nothing can be known of what is not there
        authors=frozenset(incoming.entry.author for incoming in incomings if incoming.vouched),
    )
    results: dict[int, Result] = {}
    admitted: dict[str, int] = {}
    repeated: list[int] = []
    for place, (envelope, incoming) in waiting.items():
        if envelope.id in there:
            results[place] = _compare(envelope, there[envelope.id])
        elif envelope.id in admitted:
            repeated.append(place)
        else:
            try:
                judge.admit(incoming, known)
            except Rejected as why:
                results[place] = rejected(envelope.id, why)
            except Exception:  # noqa: BLE001 - as above; nothing in there asks the database
                results[place] = _stumbled(envelope)
            else:
                known.add(incoming.entry)
                admitted[envelope.id] = place
    entries: list[Entry] = [waiting[place][1].entry for place in admitted.values()]
    positions = commands.append(feed, entries, received_at=now)
    received_at = now.isoformat()
    for place, position in zip(admitted.values(), positions, strict=True):
        results[place] = _stored_as(Status.ACCEPTED, waiting[place][0], position, received_at)
    for place in repeated:
        envelope = waiting[place][0]
        first = admitted[envelope.id]
        same = envelope.sameness == waiting[first][0].sameness
        results[place] = replace(results[first], status=Status.DUPLICATE) if same else _reused(envelope)
    return results


def _stored(envelopes: Iterable[Envelope]) -> dict[str, Record]:
    """Records by id in whichever clinic: an id is one record's in the whole ledger."""
    ids = [as_uuid(envelope.id) for envelope in envelopes]
    return {str(record.pk): record for record in Record.objects.filter(pk__in=ids).prefetch_related("supersessions")}


def _compare(envelope: Envelope, record: Record) -> Result:
    same = envelope.sameness == of_record(record).sameness
    if not same:
        return _reused(envelope)
    return _stored_as(Status.DUPLICATE, envelope, record.position, record.received_at.isoformat())


def _stored_as(status: Status, envelope: Envelope, position: int, received_at: str) -> Result:
    return stored(status, envelope.id, position=position, received_at=received_at, receipt=receipt_of(envelope))


def _reused(envelope: Envelope) -> Result:
    return rejected(envelope.id, Rejected("id_reused", "Another record has this id already.", field="id"))


def _stumbled(envelope: Envelope) -> Result:
    log.error("stumbled over a record of kind %.20s", envelope.kind, exc_info=True)  # noqa: LOG014 - in a handler
    text = "The server failed on this record. It will be tried again."
    return rejected(envelope.id, Rejected("server_fault", text, retryable=True))
