"""Each system check speaks of its own mistake, and only then."""

import pytest
from django.db import connection

from clinic import checks


def ids(messages):
    return [message.id for message in messages]


def test_the_tests_own_settings_are_in_order_but_for_the_name_that_the_test_client_calls(settings):
    settings.ALLOWED_HOSTS = list(settings.LOOPBACK_HOSTS)

    assert ids(checks.hosts(None)) + ids(checks.secret(None)) + ids(checks.writers_queue(None)) == []


@pytest.mark.parametrize("mode", ["loopback", "development"])
def test_a_mode_without_https_answers_to_no_other_name(settings, mode):
    settings.MODE = mode
    settings.ALLOWED_HOSTS = ["localhost", "clinic.example"]

    assert ids(checks.hosts(None)) == ["clinic.E001"]


def test_production_answers_to_the_names_that_it_is_given(settings):
    settings.MODE = "production"
    settings.ALLOWED_HOSTS = ["clinic.example"]

    assert ids(checks.hosts(None)) == []


@pytest.mark.parametrize("host", ["*", "*.example", ".clinic.*"])
def test_no_name_is_a_wildcard(settings, host):
    settings.MODE = "production"
    settings.ALLOWED_HOSTS = [host]

    assert ids(checks.hosts(None)) == ["clinic.E002"]


def test_a_short_key_is_told(settings):
    settings.SECRET_KEY = "k" * 49

    assert ids(checks.secret(None)) == ["clinic.E003"]


def test_a_variable_that_nothing_reads_is_told(monkeypatch):
    monkeypatch.setenv("CLINIC_HOST", "clinic.example")

    (message,) = checks.names(None)
    assert message.id == "clinic.E005"
    assert "CLINIC_HOST" in message.msg
    assert "CLINIC_HOSTS" in message.hint


@pytest.mark.skipif("connection.vendor != 'sqlite'", reason="a setting of SQLite's own")
def test_sqlite_without_immediate_transactions_is_told(monkeypatch):
    monkeypatch.setitem(connection.settings_dict["OPTIONS"], "transaction_mode", "DEFERRED")

    assert ids(checks.writers_queue(None)) == ["clinic.E006"]
