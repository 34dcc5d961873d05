"""The two databases, each made afresh for one measurement and gone after it.

SQLite lies in the scratch folder; PostgreSQL is the one that ``DATABASE_URL`` points to, where there is one.
"""

from __future__ import annotations

import os
import uuid
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from tempfile import mkdtemp
from urllib.parse import urlsplit, urlunsplit

import psycopg

from tests.journeys.site.server import environment

NO_POSTGRES = "PostgreSQL is skipped: DATABASE_URL does not point to one"


@dataclass(frozen=True, kw_only=True)
class Database:
    """``variables`` are what a process of the site is started with."""

    name: str
    state: Path
    variables: Mapping[str, str]


def kinds() -> tuple[str, ...]:
    """The databases that can be measured here."""
    return ("SQLite", "PostgreSQL") if _postgres() else ("SQLite",)


@contextmanager
def fresh(kind: str, scratch: Path, build: Path) -> Iterator[Database]:
    """An empty one."""
    state = Path(mkdtemp(prefix="load-", dir=scratch))
    variables = {**environment(state, build), "CLINIC_SYNC_PER_MINUTE": "1000000"}
    if kind == "SQLite":
        yield Database(name=kind, state=state, variables=variables)
        return
    name = f"bench_{uuid.uuid4().hex[:12]}"
    address = urlsplit(_postgres())
    with psycopg.connect(_postgres(), autocommit=True) as connection:
        connection.execute(f'CREATE DATABASE "{name}"'.encode())
    try:
        own = urlunsplit(address._replace(path=f"/{name}"))
        yield Database(name=kind, state=state, variables={**variables, "DATABASE_URL": own})
    finally:
        with psycopg.connect(_postgres(), autocommit=True) as connection:
            connection.execute(f'DROP DATABASE "{name}" WITH (FORCE)'.encode())


def _postgres() -> str:
    url = os.environ.get("DATABASE_URL", "")
    return url if url.startswith("postgres") else ""
