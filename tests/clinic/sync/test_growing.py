"""No question that a device asks walks the feed from its beginning: else it would grow slower with every year."""

import re

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

FROM_THE_BEGINNING = re.compile(r"SCAN|clinic_id=\? AND position<\?")


def ways(person, cursor):
    """How SQLite goes about each question of the ledger that one pull asks."""
    with CaptureQueriesContext(connection) as asked:
        page = person.page(cursor)
    questions = [each["sql"] for each in asked if each["sql"].startswith("SELECT") and '"ledger_record"' in each["sql"]]
    found = []
    with connection.cursor() as database:
        for question in questions:
            database.execute(f"EXPLAIN QUERY PLAN {question}")
            found += [(step[3], question) for step in database.fetchall() if "ledger_record" in step[3]]
    return page, found


@pytest.mark.skipif(connection.vendor != "sqlite", reason="PostgreSQL weighs its ways by what it counted")
@pytest.mark.parametrize("who", ["surgeon", "theatre_nurse"])
@pytest.mark.parametrize("news", [0, 1])
def test_who_has_caught_up_asks_for_what_is_new(cast, who, news):
    person = getattr(cast, who)
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    cursor = person.everything()[1]
    for _ in range(news):
        cast.surgeon.accepted(*cast.surgeon.pen.line(hospital_number="H-2"))

    page, found = ways(person, cursor)

    assert bool(page["records"]) == bool(news)
    assert found or not news
    assert [(way, question) for way, question in found if FROM_THE_BEGINNING.search(way)] == []


@pytest.mark.skipif(connection.vendor != "sqlite", reason="PostgreSQL weighs its ways by what it counted")
def test_theatre_finds_its_window_by_what_was_signed_in_it(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line())

    page, found = ways(cast.theatre_nurse, "")

    assert len(page["records"]) == 3
    assert [(way, question) for way, question in found if FROM_THE_BEGINNING.search(way)] == []
