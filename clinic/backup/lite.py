"""SQLite: the online backup, which waits for nobody and lets everybody go on writing."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from django.contrib.sessions.models import Session
from django.db import connection

from clinic.backup.failure import BackupFailed
from clinic.backup.fingerprint import Fingerprint, fingerprint

PAGES_AT_ONCE = 2000
"""Between two steps of the copy others may write; a step is a few milliseconds."""


def dump(path: Path) -> Fingerprint:
    """Copy the database into ``path``, and read the copy's ledger."""
    connection.ensure_connection()
    with closing(sqlite3.connect(path)) as copy:
        connection.connection.backup(copy, pages=PAGES_AT_ONCE, sleep=0.01)
        _leave_out_sessions(copy)
        copy.execute("PRAGMA journal_mode=DELETE")  # one file, without a log beside it
        return _checked(copy)


def _leave_out_sessions(copy: sqlite3.Connection) -> None:
    """Overwritten, for what is only deleted can be read in the file."""
    copy.execute("PRAGMA secure_delete=ON")
    copy.execute(f"DELETE FROM {Session._meta.db_table}")  # noqa: S608, SLF001 - a table's name of Django's own
    copy.commit()


def load(path: Path) -> None:
    """Put the copy in ``path`` in the database's place."""
    with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as copy:
        _checked(copy)
        connection.ensure_connection()
        copy.backup(connection.connection)
    connection.close()


def _checked(copy: sqlite3.Connection) -> Fingerprint:
    try:
        (verdict,) = copy.execute("PRAGMA integrity_check").fetchone()
        if verdict == "ok":
            return fingerprint(copy.cursor())
    except sqlite3.DatabaseError as error:
        raise BackupFailed(f"The file is no backup of a clinic, or it is damaged ({error}).") from error
    raise BackupFailed(f"The file is damaged: {verdict}")
