"""Figures for the machine room: counted by route, and closed to strangers."""

import pytest

TOKEN = "a token of thirty-two characters!"  # noqa: S105 - of the test


def test_calls_are_counted_by_route_and_name_nobody(cast, client):
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    client.get(f"/made-up/{line[0]['id']}")
    text = client.get("/metrics").content.decode()

    assert 'clinic_calls_total{method="POST",route="api/v1/clinics/<uuid:clinic>/push",status="200"}' in text
    assert "clinic_call_seconds_bucket" in text
    for word in (line[0]["id"], str(cast.clinic.pk), "amara", "Ferreira", "made-up"):
        assert word not in text


def test_without_a_token_only_this_machine_reads(client, db):
    assert client.get("/metrics").status_code == 200
    assert client.get("/metrics", REMOTE_ADDR="192.0.2.7").status_code == 404
    assert client.get("/metrics", headers={"X-Forwarded-For": "192.0.2.7"}).status_code == 404


@pytest.mark.parametrize(
    ("headers", "status"),
    [({}, 404), ({"Authorization": "Bearer wrong"}, 404), ({"Authorization": f"Bearer {TOKEN}"}, 200)],
)
def test_with_a_token_whoever_has_it_reads(client, db, settings, headers, status):
    settings.METRICS_TOKEN = TOKEN

    assert client.get("/metrics", headers=headers, REMOTE_ADDR="192.0.2.7").status_code == status
