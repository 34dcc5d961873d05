"""What must hold in the end, said as objections where it does not."""

from __future__ import annotations

import hashlib
import json
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, Any

from planner.canonical import canonical
from tests.fault.device.stored import Raw, bare
from tests.fault.run.drawing import Event

if TYPE_CHECKING:
    from tests.fault.device.device import Device
    from tests.fault.run.play import Run

ENVELOPE = ("kind", "patient", "author", "device", "recorded_at", "digest")


def objections(run: Run) -> list[str]:
    """Empty: every record is everywhere once, in its place, byte for byte, and poison is where it was made."""
    books = run.site.books(run.clinic)
    taken = run.truth.taken()
    found = [*_of_server(books, taken)]
    for disk in {id(tab.disk): tab for tab in run.present()}.values():
        found += [f"{disk.login['role']} on {disk.id[:8]}: {line}" for line in _of_device(run, disk, books["records"])]
    return found


def _of_server(books: Mapping[str, Any], taken: Mapping[str, Raw]) -> Iterator[str]:
    rows = books["records"]
    positions = [row["position"] for row in rows]
    if positions != list(range(1, len(rows) + 1)):
        yield f"server: positions {positions}"
    if books["counter"] != len(rows):
        yield f"server: the counter stands at {books['counter']} with {len(rows)} records"
    ids = Counter(row["id"] for row in rows)
    yield from (f"server: lacks {_name(taken[key])}" for key in taken if key not in ids)
    yield from (f"server: has {_name(row)}, which nobody made so" for row in rows if row["id"] not in taken)
    yield from (f"server: has {key} {count} times" for key, count in ids.items() if count > 1)
    superseded = defaultdict(list)
    for record, other in books["supersessions"]:
        superseded[record].append(other)
    for row in rows:
        made = taken.get(row["id"])
        if made is None:
            continue
        if row["body"] != canonical(made["body"]) or hashlib.sha256(row["body"].encode()).hexdigest() != row["digest"]:
            yield f"server: the body of {_name(made)} is not what was made"
        if any(row[name] != made[name] for name in ENVELOPE) or superseded[row["id"]] != made["supersedes"]:
            yield f"server: the envelope of {_name(made)} is not what was made"


def _of_device(run: Run, device: Device, ledger: list[Raw]) -> Iterator[str]:
    stored, truth = device.disk.stored, run.truth
    never = truth.never_taken()
    if device.disk in run.revoked:
        yield from _of_revoked(device, truth.records, never)
        return
    mine = {key for key, record in truth.records.items() if record["device"] == device.id}
    codes = {key: code for key, code in truth.codes.items() if key in mine}
    if {key: stored.refused.get(key) for key in codes} != codes:
        yield f"set aside are {dict(stored.refused)}, not {codes}"
    wrongly = set(stored.refused) - set(codes)
    yield from (f"{_name(stored.rows[key])} was set aside with {stored.refused[key]}" for key in wrongly)
    waiting = {entry.id for entry in stored.waiting}
    yield from (f"{_name(stored.rows[key])} still waits" for key in waiting - never)
    yield from (f"{_name(truth.records[key])} is lost" for key in (mine & never) - stored.unsent)
    if stored.staging or (stored.once_more and not any(entry.offered for entry in stored.waiting)):
        yield "a feed is half fetched"
    held = {key: row for key, row in stored.rows.items() if key not in stored.unsent}
    due = {row["id"]: row for row in ledger if row["id"] in _scope(run, device, ledger)}
    yield from (f"lacks {_name(due[key])}" for key in due.keys() - held.keys())
    yield from (f"has {_name(held[key])}, which is not for it" for key in held.keys() - due.keys())
    for key in held.keys() & due.keys() & truth.records.keys():
        row, made = held[key], truth.records[key]
        if bare(row) != made or hashlib.sha256(canonical(row["body"]).encode()).hexdigest() != row["digest"]:
            yield f"{_name(made)} is not what was made"
        if row["position"] != due[key]["position"]:
            yield f"{_name(made)} stands at {row['position']}, on the server at {due[key]['position']}"


def _of_revoked(device: Device, made: Mapping[str, Raw], never: set[str]) -> Iterator[str]:
    """It is empty, unless something waits that the clinic may yet take; all else is the server's by now."""
    waiting = {entry.id for entry in device.disk.stored.waiting}
    yield from (f"{_name(made[key])} still waits on the revoked device" for key in waiting - never)
    if not device.disk.stored.wiped and not waiting:
        yield "was revoked, has nothing to send, and is not wiped"


def _scope(run: Run, device: Device, ledger: list[Raw]) -> set[str]:
    """Which of the ledger's records are for the device; for theatre reckoned here once more, from the words alone."""
    if device.login["role"] != "theatre":
        return {row["id"] for row in ledger}
    if run.line.happened[Event.THEATRE]:
        return set()
    about = {row["id"]: json.loads(row["body"]) for row in ledger if row["kind"] in ("signature", "retraction")}
    signed = {row["patient"] for row in ledger if row["kind"] == "signature"}
    plans = {about[row["id"]]["plan_id"] for row in ledger if row["kind"] == "signature"}
    own = {row["id"] for row in ledger if row["patient"] in signed and row["kind"] in ("patient", "signature")} | plans
    back = {row["id"] for row in ledger if row["kind"] == "retraction" and about[row["id"]]["record_id"] in own}
    return own | back


def _name(record: Raw) -> str:
    return f"{record['kind']} {record['id']} of {record['device'][:8]}"
