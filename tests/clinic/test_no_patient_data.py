"""Nothing of a patient but ids stands in a log, an address or an error page."""

import logging

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from django.urls import URLPattern, get_resolver

from clinic.api.push import views
from clinic.protection.log_format import WithoutData

WORDS = ("Ferreira", "2019-04-02", "H-1042", "allergic to latex")


@pytest.fixture
def log(caplog):
    """Everything that the site logs, at the finest level, as it would be written."""
    caplog.handler.setFormatter(WithoutData())
    caplog.set_level(logging.DEBUG)
    return caplog


def has_patient_data(text):
    return [word for word in WORDS if word in text]


def test_a_day_in_the_clinic_leaves_nothing_of_a_patient_in_the_log(cast, log):
    line = cast.surgeon.pen.line(allergies="allergic to latex")
    with CaptureQueriesContext(connection):  # as in development, where Django could tell of each query
        cast.surgeon.accepted(*line)
        cast.surgeon.push(*line, cast.surgeon.pen.patient(full_name="", note="Ferreira"))
        cast.theatre_nurse.page()
        cast.surgeon.client.get(f"/api/v1/clinics/{cast.clinic.pk}/cards/{line[-1]['id']}.pdf")
        cast.stranger.push(*line, clinic=cast.clinic)

    assert "Not Found" in log.text
    assert not has_patient_data(log.text)


def test_a_fault_in_the_middle_of_a_record_leaves_nothing_in_the_log_or_the_answer(cast, log, monkeypatch):
    def broken(*_args, **_options):
        raise RuntimeError("Failing row contains (Ines Ferreira, 2019-04-02, H-1042)")

    monkeypatch.setattr(views, "push", broken)
    cast.surgeon.client.raise_request_exception = False
    response = cast.surgeon.push(cast.surgeon.pen.patient())

    assert response.status_code == 500
    assert "RuntimeError at " in log.text
    assert not has_patient_data(log.text + response.content.decode())


@pytest.mark.parametrize(
    "content", [b'{"full_name": "Ines Ferreira"', b'["Ines Ferreira"]', b'{"device": "Ines Ferreira", "records": []}']
)
def test_a_body_that_cannot_be_read_is_not_quoted(cast, log, content):
    address = f"/api/v1/clinics/{cast.clinic.pk}/push"
    response = cast.surgeon.client.post(address, content, content_type="application/json")

    assert response.status_code == 400
    assert not has_patient_data(log.text + response.content.decode())


def patterns(resolver, prefix=""):
    for each in resolver.url_patterns:
        if isinstance(each, URLPattern):
            yield prefix + str(each.pattern), each.pattern.converters
        else:
            yield from patterns(each, prefix + str(each.pattern))


def test_no_address_of_the_api_has_room_for_anything_but_ids():
    for address, converters in patterns(get_resolver()):
        if address.startswith("api/"):
            assert {type(converter).__name__ for converter in converters.values()} <= {"UUIDConverter"}, address
