"""A database of the bench's own, beside whichever the other tests use: SQLite in memory-backed files, or PostgreSQL."""

from __future__ import annotations

import os
import secrets
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import urlsplit, urlunsplit

import psycopg

SHARED_MEMORY = Path("/dev/shm")  # noqa: S108 - a file there outlives a killed process, and costs no disk
URL = os.environ.get("DATABASE_URL", "")


def memory_folder() -> Path | None:
    """Where files are quick, if there is such a place."""
    return SHARED_MEMORY if os.access(SHARED_MEMORY, os.W_OK) else None


@contextmanager
def new_database(state: Path) -> Iterator[str]:
    """Its URL, and it is gone afterwards."""
    if not URL.startswith("postgres"):
        yield f"sqlite:///{state / 'clinic.sqlite3'}"
        return
    name = f"fault_{secrets.token_hex(6)}"
    with psycopg.connect(URL, autocommit=True) as server:
        server.execute(f'CREATE DATABASE "{name}"')
    try:
        yield urlunsplit(urlsplit(URL)._replace(path=f"/{name}"))
    finally:
        with psycopg.connect(URL, autocommit=True) as server:
            server.execute(f'DROP DATABASE "{name}" WITH (FORCE)')
