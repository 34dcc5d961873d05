"""However long a clinic's ledger is: each question that a call asks of it is answered by an index.

The database itself is asked how it would go about each query, so the promise needs neither a long ledger nor a clock.
How long the calls take on ledgers of a thousand and of a million records is measured by ``tests.bench long_ledger``.
"""

from __future__ import annotations

from dataclasses import dataclass

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from tests.clinic.cast import Cast

LONG = ("ledger_record", "ledger_supersession", "audit_entry")
"""The tables that only ever grow."""


def whole_tables_read(queries):
    """Each query that would read one of them from end to end, with how."""
    found = []
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            cursor.execute("SET LOCAL enable_seqscan = off")  # a short table is read whole if it may be
        for query in queries:
            sql = query["sql"]
            if not sql.startswith("SELECT") or not any(table in sql for table in LONG):
                continue
            explain = "EXPLAIN QUERY PLAN" if connection.vendor == "sqlite" else "EXPLAIN"
            cursor.execute(f"{explain} {sql}".replace("%", "%%"), [])
            plan = [str(row[-1]) for row in cursor.fetchall()]
            found += [(sql[:300], line) for line in plan if any(is_whole(line, table) for table in LONG)]
    return found


def is_whole(line, table):
    if connection.vendor == "postgresql":
        return f"Seq Scan on {table}" in line
    return line.startswith(f"SCAN {table}")


@dataclass(frozen=True)
class Day:
    """A patient with a signed plan at the end of a feed, and the cursor that stands there."""

    cast: Cast
    line: list
    cursor: str


@pytest.fixture
def day(cast):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    return Day(cast, line, cast.surgeon.everything()[1])


def card(day):
    address = f"/api/v1/clinics/{day.cast.clinic.pk}/cards/{day.line[-1]['id']}.pdf"
    assert day.cast.theatre_nurse.client.get(address).status_code == 200


CALLS = {
    "a pull that finds nothing new": lambda day: day.cast.surgeon.page(day.cursor),
    "the first page": lambda day: day.cast.surgeon.page(),
    "theatre's pull": lambda day: day.cast.theatre_nurse.page(),
    "a push": lambda day: day.cast.surgeon.accepted(*day.cast.surgeon.pen.line()),
    "a push that was answered before": lambda day: day.cast.surgeon.results(*day.line),
    "a retraction": lambda day: day.cast.surgeon.accepted(day.cast.surgeon.pen.retraction(day.line[-1])),
    "a card in theatre": card,
    "one's devices": lambda day: day.cast.surgeon.client.get("/api/v1/devices"),
}


@pytest.mark.parametrize("call", CALLS)
def test_a_call_reads_no_growing_table_from_end_to_end(day, call):
    with CaptureQueriesContext(connection) as asked:
        CALLS[call](day)

    assert asked.captured_queries
    assert whole_tables_read(asked.captured_queries) == []


def test_a_query_that_does_would_be_seen(db):
    sql = "SELECT COUNT(*) FROM ledger_record WHERE digest = 'x'"

    assert len(whole_tables_read([{"sql": sql}])) == 1
