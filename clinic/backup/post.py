"""PostgreSQL: ``pg_dump`` and ``pg_restore``, which must be of the server's version or newer."""

from __future__ import annotations

import os
import subprocess
from pathlib import Path
from typing import Final

from django.contrib.sessions.models import Session
from django.db import connection, transaction

from clinic.backup.failure import BackupFailed
from clinic.backup.fingerprint import Fingerprint, fingerprint

SESSIONS: Final = Session._meta.db_table  # noqa: SLF001 - Django's documented way
VARIABLES: Final = {
    "NAME": "PGDATABASE",
    "USER": "PGUSER",
    "PASSWORD": "PGPASSWORD",
    "HOST": "PGHOST",
    "PORT": "PGPORT",
}


def dump(path: Path) -> Fingerprint:
    """Dump the database into ``path``; the fingerprint is of the very snapshot that is dumped."""
    with transaction.atomic(), connection.cursor() as cursor:
        cursor.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY")
        cursor.execute("SELECT pg_export_snapshot()")
        (snapshot,) = cursor.fetchone()
        form = ("--format=custom", "--no-owner", "--no-privileges", f"--exclude-table-data={SESSIONS}")
        _run("pg_dump", *form, f"--snapshot={snapshot}", f"--file={path}")
        return fingerprint(cursor)


def load(path: Path) -> None:
    """Put the dump in ``path`` in the place of what the database holds, all or nothing."""
    connection.close()
    _run(
        "pg_restore",
        "--clean",
        "--if-exists",
        "--no-owner",
        "--no-privileges",
        "--single-transaction",
        f"--dbname={connection.settings_dict['NAME']}",
        str(path),
    )


def _run(*command: str) -> None:
    """The password goes by the environment, where no list of processes shows it."""
    settings = connection.settings_dict
    told = {variable: str(settings[name]) for name, variable in VARIABLES.items() if settings.get(name)}
    told |= {f"PG{name.upper()}": str(value) for name, value in settings["OPTIONS"].items() if name == "sslmode"}
    try:
        done = subprocess.run(command, env=os.environ | told, capture_output=True, text=True, check=False)  # noqa: S603 - of our own
    except FileNotFoundError as error:
        raise BackupFailed(f"{command[0]} is not installed (Debian: postgresql-client).") from error
    if done.returncode:
        # Never the whole: a failing row would be quoted.
        raise BackupFailed(f"{command[0]} failed: {(done.stderr.splitlines() or ['without a word'])[0][:200]}")
