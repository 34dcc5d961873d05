"""Database triggers that refuse to change or remove a row of the ledger, whoever asks: ORM, shell, or SQL.

Set up by migration and looked for by the system check ``clinic.E004``: a later migration that makes a table anew
(SQLite does so for most changes) must put them up again. ``manage.py flush`` fails on them, and so it should; restoring
a backup inserts, which they allow.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from django.db.backends.base.base import BaseDatabaseWrapper

REFUSAL = "the ledger is only added to"

KEYS: Mapping[str, str] = {
    "ledger_record": "id = NEW.id OR (clinic_id = NEW.clinic_id AND position = NEW.position)",
    "ledger_supersession": "id = NEW.id OR (record_id = NEW.record_id AND superseded_id = NEW.superseded_id)",
}
"""The guarded tables, and when a row to insert would take the place of one that is there."""

POSTGRES_FUNCTION = f"""
CREATE OR REPLACE FUNCTION ledger_refuse() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION '{REFUSAL}' USING ERRCODE = 'integrity_constraint_violation'; END $$
"""


@dataclass(frozen=True)
class Trigger:
    """One trigger and the statements that create and drop it."""

    name: str
    create: str
    drop: str


def put_up(connection: BaseDatabaseWrapper, keys: Mapping[str, str] = KEYS) -> None:
    """Create the triggers; those that stand already are left. ``keys`` as :data:`KEYS`, for other guarded tables."""
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            cursor.execute(POSTGRES_FUNCTION)
        for trigger in _triggers(connection, keys):
            cursor.execute(trigger.create)


def take_down(connection: BaseDatabaseWrapper, keys: Mapping[str, str] = KEYS) -> None:
    """Remove the triggers: to reverse the migration, or to empty a test database."""
    with connection.cursor() as cursor:
        for trigger in _triggers(connection, keys):
            cursor.execute(trigger.drop)


def missing(connection: BaseDatabaseWrapper, keys: Mapping[str, str] = KEYS) -> list[str]:
    """The names of triggers that do not stand."""
    if connection.vendor == "postgresql":
        standing = "SELECT tgname FROM pg_trigger WHERE NOT tgisinternal AND tgenabled IN ('O', 'A')"
    else:
        standing = "SELECT name FROM sqlite_master WHERE type = 'trigger'"
    with connection.cursor() as cursor:
        cursor.execute(standing)
        found = {row[0] for row in cursor.fetchall()}
    return [trigger.name for trigger in _triggers(connection, keys) if trigger.name not in found]


def _triggers(connection: BaseDatabaseWrapper, keys: Mapping[str, str]) -> Iterator[Trigger]:
    return _postgres_triggers(keys) if connection.vendor == "postgresql" else _sqlite_triggers(keys)


def _postgres_triggers(keys: Iterable[str]) -> Iterator[Trigger]:
    for table in keys:
        for event, each in (("update", "ROW"), ("delete", "ROW"), ("truncate", "STATEMENT")):
            name = f"{table}_no_{event}"
            yield Trigger(
                name,
                f"CREATE OR REPLACE TRIGGER {name} BEFORE {event.upper()} ON {table} "
                f"FOR EACH {each} EXECUTE FUNCTION ledger_refuse()",
                f"DROP TRIGGER IF EXISTS {name} ON {table}",
            )


def _sqlite_triggers(keys: Mapping[str, str]) -> Iterator[Trigger]:
    """``INSERT OR REPLACE`` removes a row without asking the delete trigger, so it has a guard of its own."""
    for table, same_key in keys.items():
        taken = f"WHEN EXISTS (SELECT 1 FROM {table} WHERE {same_key}) "  # noqa: S608 - constants of this module
        for name, event, condition in (
            (f"{table}_no_update", "UPDATE", ""),
            (f"{table}_no_delete", "DELETE", ""),
            (f"{table}_no_replace", "INSERT", taken),
        ):
            yield Trigger(
                name,
                f"CREATE TRIGGER IF NOT EXISTS {name} BEFORE {event} ON {table} {condition}"
                f"BEGIN SELECT RAISE(ABORT, '{REFUSAL}'); END",
                f"DROP TRIGGER IF EXISTS {name}",
            )
