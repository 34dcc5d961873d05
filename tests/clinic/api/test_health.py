"""Whether the server answers, and whether it may be given work."""

import pytest
from django.db import connection
from django.db.migrations.recorder import MigrationRecorder

from clinic.ledger import guards


def answered(client):
    response = client.get("/ready")
    return response.status_code, response.json().get("status") or response.json()["errors"][0]["code"]


def test_a_server_whose_database_is_in_order_is_ready(client, db):
    assert answered(client) == (200, "ready")


def test_a_server_whose_tables_are_behind_is_not_given_work(client, db):
    MigrationRecorder.Migration.objects.filter(app="audit").delete()

    assert answered(client) == (503, "not_migrated")
    assert client.get("/health").status_code == 200


@pytest.mark.django_db(transaction=True)
def test_a_server_whose_ledger_is_not_guarded_is_not_given_work(client):
    guards.take_down(connection)
    try:
        assert answered(client) == (503, "not_guarded")
    finally:
        guards.put_up(connection)
