"""An app that is too old may read and is told to update before it sends."""

import pytest

from clinic.ledger.models import Record

OLD = {"X-Client": "1"}


@pytest.fixture
def minimum(settings):
    settings.MINIMUM_CLIENT = 2


def push(cast, headers):
    content = {"device": cast.surgeon.device, "records": [cast.surgeon.pen.patient()]}
    address = f"/api/v1/clinics/{cast.clinic.pk}/push"
    return cast.surgeon.client.post(address, content, content_type="application/json", headers=headers)


@pytest.mark.parametrize("told", ["1", "0", "one", "2.0", ""])
def test_an_old_app_is_told_what_is_needed_and_nothing_is_stored(cast, minimum, told):
    response = push(cast, {"X-Client": told})
    (error,) = response.json()["errors"]

    assert (response.status_code, error["code"], error["allowed"]) == (426, "client_too_old", "2 or newer")
    assert error.keys() == {"code", "text", "field", "value", "allowed"}
    assert "Update it" in error["text"]
    assert not Record.objects.exists()


@pytest.mark.parametrize("headers", [{"X-Client": "2"}, {"X-Client": "3"}, {}])
def test_a_newer_app_and_a_caller_that_is_none_may_send(cast, minimum, headers):
    assert push(cast, headers).json()["results"][0]["status"] == "accepted"


def test_an_old_app_may_still_fetch_and_see_cards(cast, minimum):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    clinic = f"/api/v1/clinics/{cast.clinic.pk}"
    client = cast.theatre_nurse.client

    pulled = client.get(f"{clinic}/pull", {"device": cast.theatre_nurse.device}, headers=OLD)
    card = client.get(f"{clinic}/cards/{line[-1]['id']}.pdf", headers=OLD)
    assert (len(pulled.json()["records"]), card.status_code) == (3, 200)


def test_an_old_app_may_ask_who_is_signed_in(client, db, minimum):
    response = client.get("/api/v1/session", headers=OLD)

    assert (response.status_code, response.json()["minimum_client"]) == (200, 2)
