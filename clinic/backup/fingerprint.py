"""What is in a ledger, as one line to compare."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from typing import Any

IN_ORDER = "SELECT clinic_id, position, id, digest FROM ledger_record ORDER BY clinic_id, position"


@dataclass(frozen=True)
class Fingerprint:
    """How many records, and the SHA-256 over the place, id and digest of each, clinic by clinic in feed order."""

    records: int
    digest: str

    def __str__(self) -> str:
        return f"{self.records} records, digest {self.digest}"


def fingerprint(cursor: Any) -> Fingerprint:  # noqa: ANN401 - a cursor of Django, sqlite3 or psycopg
    """The same on both databases. A body is named by its digest, which is of exactly its bytes."""
    whole, count = hashlib.sha256(), 0
    cursor.execute(IN_ORDER)
    while rows := cursor.fetchmany(5000):
        for clinic, position, record, digest in rows:
            line = f"{clinic} {position} {record} {digest}\n".replace("-", "")  # SQLite keeps UUIDs without hyphens
            whole.update(line.encode())
        count += len(rows)
    return Fingerprint(count, whole.hexdigest())
