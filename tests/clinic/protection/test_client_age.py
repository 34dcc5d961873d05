"""An app that is too old hears so, and can still sign in."""

import pytest


@pytest.mark.parametrize("call", ["pull", "push"])
@pytest.mark.parametrize("told", ["1", "0", "one", "2.0", ""])
def test_an_old_app_is_told_what_is_needed(client, settings, call, told):
    settings.MINIMUM_CLIENT = 2
    response = client.get(f"/api/v1/clinics/0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10/{call}", headers={"X-Client": told})
    (error,) = response.json()["errors"]

    assert (response.status_code, error["code"], error["allowed"]) == (426, "client_too_old", "2 or newer")


@pytest.mark.parametrize("headers", [{"X-Client": "2"}, {"X-Client": "3"}, {}])
def test_a_newer_app_and_a_caller_that_is_none_come_to_the_door(client, db, settings, headers):
    settings.MINIMUM_CLIENT = 2
    response = client.get("/api/v1/clinics/0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10/pull", headers=headers)

    assert response.status_code == 401


def test_an_old_app_may_ask_who_is_signed_in(client, db, settings):
    settings.MINIMUM_CLIENT = 2
    response = client.get("/api/v1/session", headers={"X-Client": "1"})

    assert (response.status_code, response.json()["minimum_client"]) == (200, 2)
