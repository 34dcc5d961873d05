"""Which records go next, in which order. Pure."""

from __future__ import annotations

import json
from collections.abc import Callable, Collection

from tests.fault.device.stored import ADDED_BY_SERVER, Entry, Raw, Stored, bare


def next_batch(
    stored: Stored, *, asked: Collection[str], most: int, shuffle: Callable[[list[Entry]], None] | None = None
) -> list[Raw]:
    """The first that wait and were not ``asked`` about in this round, without those that mention a refused one.

    They go in the order of saving. The protocol asks for none, so a device may ``shuffle`` them.
    """
    blocked = set(stored.refused)
    waiting = list(stored.waiting)
    if shuffle:
        shuffle(waiting)
    batch: list[Raw] = []
    for entry in waiting:
        row = stored.rows[entry.id]
        if mentions(row, blocked):
            blocked.add(entry.id)
        elif entry.id not in asked and len(batch) < most:
            batch.append(sent_form(entry, row))
    return batch


def sent_form(entry: Entry, row: Raw) -> Raw:
    """What the clinic once had comes with its receipt."""
    receipt = {"receipt": row["receipt"]} if entry.offered and row.get("receipt") else {}
    return bare(row) | receipt


def mentions(record: Raw, ids: Collection[str]) -> bool:
    """Whether it refers to one of them, its own id apart."""
    if not ids:
        return False
    told = {name: value for name, value in record.items() if name != "id" and name not in ADDED_BY_SERVER}
    text = json.dumps(told | ({"patient": ""} if record["patient"] == record["id"] else {}))
    return any(key in text for key in ids)
