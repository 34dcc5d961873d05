"""A body that is too large is refused before it is read."""

import pytest

ADDRESS = "/api/v1/session"


def test_a_body_beyond_the_limit_is_refused_with_the_limit(client, db, settings):
    settings.BODY_LIMIT = 40
    response = client.post(ADDRESS, b"[" * 41, content_type="application/json")
    (error,) = response.json()["errors"]

    assert (response.status_code, error["code"]) == (413, "body_too_large")
    assert (error["value"], error["allowed"]) == ("41", "at most 40 bytes")


def test_a_body_at_the_limit_is_read(client, db, settings):
    settings.BODY_LIMIT = 40
    response = client.post(ADDRESS, b"{}".ljust(40), content_type="application/json")

    assert response.json()["errors"][0]["code"] == "required"


@pytest.mark.parametrize("length", ["-1", "many", "1e3", "9" * 5000])
def test_a_length_that_is_no_number_is_refused(client, db, length):
    response = client.post(ADDRESS, b"{}", content_type="application/json", headers={"Content-Length": length})

    assert (response.status_code, response.json()["errors"][0]["code"]) == (400, "bad_length")
