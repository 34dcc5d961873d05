"""A disk without room for another record: the database says so itself, by its own error.

SQLite may not grow beyond its present pages (``PRAGMA max_page_count``), in every request that begins while the flag
lies beside the database. On PostgreSQL a trigger raises ``disk_full`` (53100) while a row says so.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from django.conf import settings
from django.core.signals import request_started
from django.db import connection

TABLES = ("ledger_record", "audit_entry")
NO_MORE_PAGES = 1
"""SQLite takes what it has instead."""
MOST_PAGES = 2**30

POSTGRES = """
CREATE TABLE IF NOT EXISTS bench_full (since timestamptz);
CREATE OR REPLACE FUNCTION bench_refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
  IF EXISTS (SELECT 1 FROM bench_full) THEN
    RAISE EXCEPTION 'could not extend file: No space left on device' USING ERRCODE = 'disk_full';
  END IF;
  RETURN NEW;
END $$;
"""


def set_up() -> None:
    """Once per database."""
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute(POSTGRES)
            for table in TABLES:
                cursor.execute(
                    f"CREATE TRIGGER bench_full_{table} BEFORE INSERT ON {table} "
                    "FOR EACH ROW EXECUTE FUNCTION bench_refuse()"
                )


def fill() -> None:
    """From now on nothing more fits."""
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("INSERT INTO bench_full VALUES (now())")
    else:
        _flag().touch()


def free() -> None:
    """There is room again."""
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("DELETE FROM bench_full")
    else:
        _flag().unlink(missing_ok=True)


def mind() -> None:
    """In a server: every request to come looks whether there is room."""
    if connection.vendor == "sqlite":
        request_started.connect(_limit)


def _limit(**_: Any) -> None:
    with connection.cursor() as cursor:
        cursor.execute(f"PRAGMA max_page_count = {NO_MORE_PAGES if _flag().exists() else MOST_PAGES}")


def _flag() -> Path:
    return Path(settings.STATE_DIR) / "disk-full"
