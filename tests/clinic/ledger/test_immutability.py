"""Nobody changes or removes a record: not through the models, not through SQL."""

import pytest
from django.core.management import call_command
from django.core.management.base import SystemCheckError
from django.core.management.color import no_style
from django.db import IntegrityError, connection, transaction

from clinic.ledger import guards
from clinic.ledger.immutable import Immutable
from clinic.ledger.models import Record, Supersession


@pytest.fixture
def record(cast):
    first = cast.surgeon.pen.patient()
    cast.surgeon.accepted(first, cast.surgeon.pen.patient_again(first, full_name="Inês Ferreira"))
    connection.check_constraints()  # settles the deferred ones, which would stand before a TRUNCATE
    return Record.objects.get(pk=first["id"])


def execute(*statements):
    with connection.cursor() as cursor:
        for statement in statements:
            cursor.execute(statement)


@pytest.mark.parametrize(
    "change",
    [
        lambda record: record.save(),
        lambda record: record.delete(),
        lambda _: Record.objects.update(kind="plan"),
        lambda _: Record.objects.all().delete(),
        lambda record: Record.objects.bulk_update([record], ["kind"]),
        lambda record: Record.objects.update_or_create(pk=record.pk, defaults={"kind": "plan"}),
        lambda record: Record.objects.bulk_create([record], ignore_conflicts=True),
        lambda record: Record.objects.bulk_create(
            [record], update_conflicts=True, update_fields=["kind"], unique_fields=["id"]
        ),
        lambda _: Supersession.objects.update(superseded=None),
        lambda _: Supersession.objects.all().delete(),
        lambda _: Supersession.objects.get().delete(),
        lambda _: Supersession.objects.get().save(),
    ],
    ids=[
        "save", "delete", "update", "delete many", "bulk update", "update or create", "ignore conflicts",
        "update conflicts", "link update", "link delete many", "link delete", "link save",
    ],
)  # fmt: skip
def test_the_models_refuse_to_change_or_remove_a_record(record, change):
    with pytest.raises(Immutable):
        change(record)

    assert Record.objects.get(pk=record.pk).kind == "patient"
    assert Supersession.objects.count() == 1


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE ledger_record SET body = '{}'",
        "UPDATE ledger_record SET position = position + 10",
        "DELETE FROM ledger_supersession",
        "DELETE FROM ledger_record",
        "UPDATE ledger_supersession SET id = id + 100",
    ],
)
def test_the_database_refuses_to_change_or_remove_a_row(record, statement):
    with pytest.raises(IntegrityError, match=guards.REFUSAL), transaction.atomic():
        execute(statement)

    assert Record.objects.get(pk=record.pk).body == record.body
    assert Supersession.objects.count() == 1


@pytest.mark.skipif("connection.vendor != 'sqlite'", reason="a statement of SQLite's own")
@pytest.mark.parametrize("table", ["ledger_record", "ledger_supersession"])
def test_sqlite_cannot_replace_a_row_on_insert(record, table):
    statement = f"INSERT OR REPLACE INTO {table} SELECT * FROM {table}"  # noqa: S608
    with pytest.raises(IntegrityError, match=guards.REFUSAL), transaction.atomic():
        execute(statement)

    assert Record.objects.filter(pk=record.pk).exists()


@pytest.mark.postgres
@pytest.mark.parametrize(
    "statement",
    [
        "TRUNCATE ledger_record CASCADE",
        "TRUNCATE ledger_supersession",
        "INSERT INTO ledger_record SELECT * FROM ledger_record ON CONFLICT (id) DO UPDATE SET body = '{}'",
    ],
)
def test_postgresql_can_neither_truncate_nor_upsert(record, statement):
    with pytest.raises(IntegrityError, match=guards.REFUSAL), transaction.atomic():
        execute(statement)

    assert Record.objects.filter(pk=record.pk).exists()


def test_a_guard_that_is_gone_is_an_error_of_the_system_check(db):
    call_command("check", tags=["database"], databases=["default"])
    guards.take_down(connection)

    with pytest.raises(SystemCheckError, match=r"clinic\.E004"):
        call_command("check", tags=["database"], databases=["default"])

    guards.put_up(connection)
    call_command("check", tags=["database"], databases=["default"])


def test_what_flush_would_execute_is_refused(record):
    statements = connection.ops.sql_flush(no_style(), ["ledger_supersession", "ledger_record"])

    with pytest.raises(IntegrityError), transaction.atomic():
        execute(*statements)

    assert Record.objects.filter(pk=record.pk).exists()
