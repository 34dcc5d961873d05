"""The database of the site's tests, and the cast."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from django.conf import settings
from django.core.cache import cache
from django.db import connections
from django.db.backends.base.operations import BaseDatabaseOperations

from clinic.audit.guards import KEYS as AUDITED
from clinic.ledger import guards
from tests.clinic.cast import Cast, assemble

ON_POSTGRES = "postgresql" in settings.DATABASES["default"]["ENGINE"]


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Tests that need PostgreSQL say so where there is none."""
    for item in items:
        if item.get_closest_marker("postgres") and not ON_POSTGRES:
            item.add_marker(pytest.mark.skip(reason="DATABASE_URL does not point to PostgreSQL"))


@pytest.fixture(scope="session")
def django_db_modify_db_settings(tmp_path_factory: pytest.TempPathFactory) -> None:
    """SQLite on disk, as in production: in memory it has no second connection to be interleaved with."""
    if not ON_POSTGRES:
        path = tmp_path_factory.mktemp("database") / "test.sqlite3"
        connections["default"].settings_dict["TEST"]["NAME"] = str(path)


@pytest.fixture(autouse=True, scope="session")
def flush_past_the_guards() -> Iterator[None]:
    """Emptying the database between tests is the one thing that the guards must stand aside for."""
    flush = BaseDatabaseOperations.execute_sql_flush

    def lifted(self: BaseDatabaseOperations, sql_list: list[str]) -> None:
        for keys in (guards.KEYS, AUDITED):
            guards.take_down(self.connection, keys)
        try:
            flush(self, sql_list)
        finally:
            for keys in (guards.KEYS, AUDITED):
                guards.put_up(self.connection, keys)

    BaseDatabaseOperations.execute_sql_flush = lifted
    yield
    BaseDatabaseOperations.execute_sql_flush = flush


@pytest.fixture(autouse=True)
def forgotten_tries() -> None:
    """Sign-in tries of one test do not count in the next."""
    cache.clear()


@pytest.fixture
def cast(db: None) -> Cast:
    """Everybody, present and signed in."""
    return assemble()


@pytest.fixture
def committed_cast(transactional_db: None) -> Cast:
    """Everybody, committed, for tests with several connections."""
    return assemble()
