"""The demo's database: made, brought up to date, or explained."""

from __future__ import annotations

from contextlib import contextmanager
from typing import TYPE_CHECKING

from django.core.management import call_command
from django.db import DatabaseError, connection
from django.db.migrations.exceptions import InconsistentMigrationHistory
from django.db.migrations.executor import MigrationExecutor

from clinic.demo.obstacle import Obstacle

if TYPE_CHECKING:
    from collections.abc import Iterator


def steps_missing() -> int:
    """How many migrations the database lacks. Each is all or nothing: a broken-off run goes on from there."""
    with _explained():
        executor = MigrationExecutor(connection)
        return len(executor.migration_plan(executor.loader.graph.leaf_nodes()))


def bring_up_to_date() -> None:
    """Apply them."""
    with _explained():
        call_command("migrate", verbosity=0, interactive=False)


@contextmanager
def _explained() -> Iterator[None]:
    place = connection.settings_dict["NAME"]
    try:
        yield
    except InconsistentMigrationHistory as error:
        raise Obstacle(f"{place} was made by another version ({error}). Move it away to start afresh.") from error
    except DatabaseError as error:
        raise Obstacle(f"{place} cannot be used: {error}. If it holds nothing you need, move it away.") from error
