"""Rows into a table that is only added to, many at once, with one statement.

An object of a model for each row, and a statement made for so many objects, would cost several times what the database
does with them. So the values go in as they are: PostgreSQL copies them, SQLite runs one prepared statement over them.
Constraints and triggers hold as for any other row, and errors are Django's own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import datetime
from operator import attrgetter
from typing import Any, TypeAlias
from uuid import UUID

from django.db import connection, models, transaction

Row: TypeAlias = tuple[Any, ...]


@transaction.atomic(savepoint=False)
def insert(model: type[models.Model], fields: Sequence[str], rows: Iterable[Row]) -> None:
    """Rows of ``model`` with the values of ``fields``. A surrounding transaction fails with any of them."""
    table, columns = model._meta.db_table, [_column(model, field) for field in fields]  # noqa: SLF001 - Django's own
    (_copy if connection.vendor == "postgresql" else _execute)(table, columns, rows)


def _column(model: type[models.Model], field: str) -> str:
    found: Any = model._meta.get_field(field)  # noqa: SLF001 - Django's own
    return connection.ops.quote_name(found.column)


def _copy(table: str, columns: Sequence[str], rows: Iterable[Row]) -> None:
    statement = f"COPY {table} ({', '.join(columns)}) FROM STDIN"
    with connection.cursor() as cursor, connection.wrap_database_errors, cursor.copy(statement) as door:
        for row in rows:
            door.write_row(row)


def _execute(table: str, columns: Sequence[str], rows: Iterable[Row]) -> None:
    marks = ", ".join(["%s"] * len(columns))
    statement = f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({marks})"  # noqa: S608 - names of the models
    forms: Mapping[type, Callable[[Any], str | None]] = {
        UUID: attrgetter("hex"),
        datetime: connection.ops.adapt_datetimefield_value,
    }
    plain = [tuple(forms[type(value)](value) if type(value) in forms else value for value in row) for row in rows]
    with connection.cursor() as cursor:
        cursor.executemany(statement, plain)
