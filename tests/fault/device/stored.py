"""What a device has stored, as one value, and what each step makes of it. Pure: a step is done whole or not at all."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

Raw = dict[str, Any]
ADDED_BY_SERVER = ("position", "received_at", "receipt")


@dataclass(frozen=True)
class Entry:
    """A record that the clinic has not got yet, or (``offered``) no longer has. ``code``: refused for good, and why."""

    id: str
    offered: bool = False
    code: str = ""

    @property
    def waits(self) -> bool:
        return not self.code


@dataclass(frozen=True)
class Staging:
    """A new feed, beside what is there until it is complete. ``restored``: the old one may have held more."""

    restored: bool
    cursor: str = ""
    rows: Mapping[str, Raw] = field(default_factory=dict)


@dataclass(frozen=True, kw_only=True)
class Stored:
    """``rows`` are records with what the server adds; ``once_more``: a last fetch is due once offers are answered.

    ``wiped``: the device was revoked, has said its last, and holds nothing any more.
    """

    rows: Mapping[str, Raw] = field(default_factory=dict)
    outbox: tuple[Entry, ...] = ()
    cursor: str = ""
    staging: Staging | None = None
    once_more: bool = False
    wiped: bool = False

    @property
    def is_new_here(self) -> bool:
        """It has sent something, and fetched nothing yet."""
        return not self.cursor and bool(self.rows.keys() - self.unsent)

    @property
    def unsent(self) -> frozenset[str]:
        return frozenset(entry.id for entry in self.outbox)

    @property
    def waiting(self) -> tuple[Entry, ...]:
        return tuple(entry for entry in self.outbox if entry.waits)

    @property
    def refused(self) -> Mapping[str, str]:
        """The codes by id."""
        return {entry.id: entry.code for entry in self.outbox if entry.code}


def bare(row: Raw) -> Raw:
    """The record as it was made."""
    return {name: value for name, value in row.items() if name not in ADDED_BY_SERVER}


def saved(stored: Stored, record: Raw) -> Stored:
    """A record made here, with its entry in the outbox."""
    return replace(stored, rows={**stored.rows, record["id"]: record}, outbox=(*stored.outbox, Entry(record["id"])))


def settled(stored: Stored, results: Sequence[Raw], *, run: Raw | None) -> Stored:
    """The clinic's word on each record of a push; a run of the feed counts from where the device still stands."""
    sent = {result["id"]: result for result in results if result["status"] in ("accepted", "duplicate")}
    codes = {
        result["id"]: result["code"] for result in results if result["status"] == "rejected" and not result["retryable"]
    }
    added = {
        key: stored.rows[key] | {name: result[name] for name in ADDED_BY_SERVER}
        for key, result in sent.items()
        if key in stored.rows
    }
    left = (entry for entry in stored.outbox if entry.id not in sent)
    outbox = tuple(replace(entry, code=codes[entry.id]) if entry.id in codes else entry for entry in left)
    steps = run is not None and not stored.staging and stored.cursor == run["after"] and sent.keys() <= added.keys()
    cursor = run["cursor"] if run and steps else stored.cursor
    return replace(stored, rows={**stored.rows, **added}, outbox=outbox, cursor=cursor)


def retried(stored: Stored) -> Stored:
    """What was refused waits once more: a revoked device has no later."""
    return replace(stored, outbox=tuple(replace(entry, code="") for entry in stored.outbox))


def wiped(_: Stored) -> Stored:
    """Nothing is left."""
    return Stored(wiped=True)


def taken_in(stored: Stored, page: Raw, *, asked: str) -> Stored:
    """A page of the feed with its cursor; of another tab's page, which came first, nothing is taken twice."""
    if stored.staging or stored.cursor != asked:
        return stored
    rows, sent = _merged(stored, page["records"])
    gone = set(page["removed"]) - stored.unsent
    kept = {key: row for key, row in rows.items() if key not in gone}
    outbox = tuple(entry for entry in stored.outbox if entry.id not in sent)
    return replace(stored, rows=kept, outbox=outbox, cursor=page["cursor"])


def begun_afresh(stored: Stored, *, restored: bool) -> Stored:
    """From the beginning of a feed, beside what is here. A restore that is not dealt with yet stays one."""
    again = restored or bool(stored.staging and stored.staging.restored)
    return replace(stored, staging=Staging(restored=again), once_more=False)


def found_restored(stored: Stored) -> Stored:
    """The new feed is that of a restored server."""
    return replace(stored, staging=stored.staging and replace(stored.staging, restored=True))


def staged(stored: Stored, page: Raw, *, asked: str) -> Stored:
    """A page of the new feed."""
    if stored.staging is None or stored.staging.cursor != asked:
        return stored
    gone = set(page["removed"])
    rows = {key: row for key, row in stored.staging.rows.items() if key not in gone}
    fresh = {record["id"]: record for record in page["records"]}
    return replace(stored, staging=replace(stored.staging, cursor=page["cursor"], rows=rows | fresh))


def swapped(stored: Stored, *, reached: str) -> Stored:
    """The new feed, complete at the cursor ``reached``, in place of the old.

    What waits in the outbox is kept, and what a restored ledger lacks joins it.
    """
    if stored.staging is None or stored.staging.cursor != reached:
        return stored
    fetched = stored.staging.rows
    lacking = sorted(set(stored.rows) - set(fetched) - stored.unsent) if stored.staging.restored else []
    offers = tuple(Entry(key, offered=True) for key in lacking)
    outbox = tuple(entry for entry in stored.outbox if not _is_answered(stored, entry, fetched)) + offers
    held = {entry.id: stored.rows[entry.id] for entry in outbox}
    offers_something = any(entry.offered for entry in outbox)
    return Stored(rows={**fetched, **held}, outbox=outbox, cursor=stored.staging.cursor, once_more=offers_something)


def _is_answered(stored: Stored, entry: Entry, fetched: Mapping[str, Raw]) -> bool:
    """The clinic's copy of an unsent record is the answer to a push whose reply was lost."""
    return entry.id in fetched and bare(fetched[entry.id]) == bare(stored.rows[entry.id])


def _merged(stored: Stored, records: Iterable[Raw]) -> tuple[dict[str, Raw], set[str]]:
    """Rows with the page's; of one that is unsent here, only if it is the very same, and then it counts as sent."""
    rows, sent = dict(stored.rows), set()
    for record in records:
        key = record["id"]
        if key in stored.unsent:
            if bare(record) != bare(stored.rows[key]):
                continue
            sent.add(key)
        rows[key] = record
    return rows, sent
