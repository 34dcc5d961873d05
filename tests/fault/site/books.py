"""What the database holds of one clinic, read past the site's own code."""

from __future__ import annotations

from typing import Any
from uuid import UUID

from django.db import connection

COLUMNS = ("position", "id", "kind", "patient", "author", "device", "recorded_at", "body", "digest")
IDS = ("id", "patient", "device")
RECORDS = f"SELECT {', '.join(COLUMNS)} FROM ledger_record WHERE clinic_id = %s ORDER BY position"  # noqa: S608


def of(clinic: str) -> dict[str, Any]:
    """Its records in feed order, who supersedes whom, and where its counter stands."""
    key = UUID(clinic) if connection.vendor == "postgresql" else UUID(clinic).hex
    with connection.cursor() as cursor:
        cursor.execute(RECORDS, [key])
        records = [_told(row) for row in cursor.fetchall()]
        cursor.execute(
            "SELECT record_id, superseded_id FROM ledger_supersession JOIN ledger_record r ON r.id = record_id "
            "WHERE r.clinic_id = %s ORDER BY ledger_supersession.id",
            [key],
        )
        links = [[_id(record), _id(superseded)] for record, superseded in cursor.fetchall()]
        cursor.execute("SELECT position FROM ledger_feedcounter WHERE clinic_id = %s", [key])
        counter = cursor.fetchone()
    return {"records": records, "supersessions": links, "counter": counter[0] if counter else 0}


def _told(row: tuple[Any, ...]) -> dict[str, Any]:
    named = dict(zip(COLUMNS, row, strict=True))
    return named | {name: _id(named[name]) for name in IDS}


def _id(value: object) -> str:
    return str(value if isinstance(value, UUID) else UUID(str(value)))
