"""Entries as text: JSON lines, or CSV for a spreadsheet."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterable
from typing import IO

from clinic.audit.models import Entry

COLUMNS = (
    "id", "at", "who", "device", "clinic", "call", "status", "code",
    "first_position", "last_position", "records", "patients",
)  # fmt: skip


def row(entry: Entry) -> dict[str, str | int | None]:
    """One entry; moments in ISO 8601, UTC."""
    values = {name: getattr(entry, name) for name in COLUMNS}
    values |= {name: str(values[name]) if values[name] else None for name in ("device", "clinic")}
    return values | {"at": entry.at.isoformat()}


def write_json(entries: Iterable[Entry], out: IO[str]) -> None:
    """One JSON object a line."""
    for entry in entries:
        out.write(json.dumps(row(entry), ensure_ascii=False) + "\n")


def write_csv(entries: Iterable[Entry], out: IO[str]) -> None:
    """A line of names, then one a line; a value that a spreadsheet would calculate is quoted with an apostrophe."""
    lines = csv.writer(out)
    lines.writerow(COLUMNS)
    for entry in entries:
        lines.writerow([_plain(value) for value in row(entry).values()])


def _plain(value: str | int | None) -> str | int | None:
    return f"'{value}" if isinstance(value, str) and value[:1] in {"=", "+", "-", "@", "\t", "\r"} else value
