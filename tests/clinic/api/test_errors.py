"""Every error has one shape, wherever it comes from, and gives nothing away."""

import pytest
from django.db import OperationalError

from clinic.api.health import views as health
from clinic.api.propose import views as propose

KEYS = {"code", "text", "field", "value", "allowed"}


def code(response):
    assert response.headers["Content-Type"] == "application/json"
    (error,) = response.json()["errors"]
    assert error.keys() == KEYS
    assert error["text"]
    return response.status_code, error["code"]


@pytest.fixture
def lenient(cast):
    cast.surgeon.client.raise_request_exception = False
    return cast.surgeon.client


@pytest.mark.parametrize(
    ("method", "address", "expected"),
    [
        ("get", "/api/v1/nothing", (404, "not_found")),
        ("get", "/nothing", (404, "not_found")),
        ("get", "/api/v1/clinics/not-a-uuid/pull", (404, "not_found")),
        ("get", "/api/v1/propose", (405, "method_not_allowed")),
        ("put", "/api/v1/session", (405, "method_not_allowed")),
        ("post", "/health", (405, "method_not_allowed")),
    ],
)
def test_an_address_or_method_that_is_not_there_answers_in_the_shape(lenient, method, address, expected):
    assert code(getattr(lenient, method)(address)) == expected


def test_a_stranger_is_told_to_sign_in(cast):
    response = cast.anonymous.push()

    assert code(response) == (401, "not_authenticated")
    assert response.headers["WWW-Authenticate"] == "Session"


def test_a_request_for_another_host_is_refused(lenient):
    assert code(lenient.get("/health", headers={"Host": "elsewhere.example"})) == (400, "bad_request")


def test_a_fault_of_the_server_says_that_nothing_was_lost_and_nothing_else(lenient, monkeypatch, caplog):
    def broken(_case):
        raise ZeroDivisionError("Ines Ferreira")

    monkeypatch.setattr(propose, "propose", broken)
    case = {"schema": 1, "table": "wright-after-parks", "examination": {
        "schema": 1, "examined_on": "2026-11-20",
        "readings": [{"gaze": "primary", "range": "distance", "correction": "with", "horizontal_pd": 40}],
    }}  # fmt: skip
    response = lenient.post("/api/v1/propose", case, content_type="application/json")

    assert code(response) == (500, "server_fault")
    assert b"Ferreira" not in response.content
    assert "Ferreira" not in caplog.text


def test_a_database_that_is_away_is_told_as_such(lenient, monkeypatch):
    def away(*_arguments, **_options):
        raise OperationalError("could not connect to 10.1.2.3")

    with monkeypatch.context() as patched:
        patched.setattr(health.connection, "cursor", away)
        response = lenient.get("/health")

    assert code(response) == (503, "unavailable")
    assert b"10.1.2.3" not in response.content


def test_a_push_that_finds_the_database_locked_is_told_to_come_again(cast, monkeypatch):
    def locked(*_arguments, **_options):
        raise OperationalError("database is locked")

    monkeypatch.setattr("clinic.api.push.views.push", locked)

    assert code(cast.surgeon.push(cast.surgeon.pen.patient())) == (503, "unavailable")


@pytest.mark.parametrize("limit", ["0", "1001", "-1", "many", "1.5", "٣", "9" * 400])
def test_a_limit_out_of_range_is_told_with_the_range(cast, limit):
    response = cast.surgeon.pull(limit=limit)

    assert code(response) == (400, "out_of_range")
    assert response.json()["errors"][0]["allowed"] == "a whole number from 1 to 1000"
