"""The request around the records."""

import gzip
import json

import pytest
from django.conf import settings

from clinic.sync.protocol import MOST_RECORDS

TOKEN = "k" * 32


@pytest.mark.parametrize("records", [None, "all", {}, 5])
def test_a_push_must_list_records(cast, records):
    response = cast.surgeon.push(records=records)

    assert (response.status_code, response.json()["errors"][0]["field"]) == (400, "records")


def test_an_empty_push_is_answered_with_no_results(cast):
    assert cast.surgeon.results() == []


def test_a_push_of_too_many_records_is_refused_as_a_whole_and_says_how_many_it_takes(cast):
    response = cast.surgeon.push(*[None] * (MOST_RECORDS + 1))

    (error,) = response.json()["errors"]
    assert response.status_code == 413
    assert (error["code"], error["value"]) == ("batch_too_large", str(MOST_RECORDS + 1))
    assert str(MOST_RECORDS) in error["allowed"]


def test_the_largest_push_enters(cast):
    records = [cast.surgeon.pen.patient(hospital_number=f"H-{number}") for number in range(MOST_RECORDS)]

    assert [result["position"] for result in cast.surgeon.accepted(*records)] == list(range(1, MOST_RECORDS + 1))


def test_a_push_costs_a_fixed_number_of_queries(cast, django_assert_num_queries):
    records = [cast.surgeon.pen.patient(hospital_number=f"H-{number}") for number in range(50)]
    cast.surgeon.accepted(cast.surgeon.pen.patient())

    # session, account, membership, device, devices; where the feed ends, look, begin, lock, insert, counter,
    # end, where the feed stands, audit trail
    with django_assert_num_queries(14):
        cast.surgeon.accepted(*records)


@pytest.mark.parametrize(
    "content",
    [
        b"{",
        b"[]",
        b"null",
        b'{"a": NaN}',
        b'{"a": 1e999',
        b"\xff\xfe",
        b"[" * 100_000,
        b'{"a":' + b"9" * 5000 + b"}",
    ],
    ids=["cut", "list", "null", "nan", "cut number", "not utf-8", "deep", "digits"],
)
def test_a_body_that_is_not_a_json_object_is_refused(cast, content):
    address = f"/api/v1/clinics/{cast.clinic.pk}/push"
    response = cast.surgeon.client.post(address, content, content_type="application/json")

    assert (response.status_code, response.json()["errors"][0]["code"]) == (400, "bad_json")


def test_a_record_nested_without_end_is_only_that_records_fault(cast):
    deep = json.loads("[" * 500 + "]" * 500)
    poison = cast.surgeon.pen.patient() | {"body": {"schema": 1, "full_name": deep}}
    good = cast.surgeon.pen.patient()

    assert [result["status"] for result in cast.surgeon.results(poison, good)] == ["rejected", "accepted"]


@pytest.mark.parametrize("content_type", ["text/plain", "multipart/form-data; boundary=x", "application/xml"])
def test_a_body_of_another_type_is_refused(cast, content_type):
    response = cast.surgeon.client.post(f"/api/v1/clinics/{cast.clinic.pk}/push", b"{}", content_type=content_type)

    assert (response.status_code, response.json()["errors"][0]["code"]) == (415, "unsupported_media_type")


@pytest.mark.parametrize(
    ("content", "encoding", "status", "code"),
    [
        (b'{"a": NaN}', "identity", 400, "bad_json"),
        (gzip.compress(b" " * (settings.BODY_LIMIT + 1)), "gzip", 413, "body_too_large"),
    ],
    ids=["nan", "too large once expanded"],
)
def test_a_body_that_cannot_be_read_is_refused_for_that_and_not_for_its_token(cast, content, encoding, status, code):
    """A device sends less, or sets the record aside, only if it is told what is wrong."""
    surgeon = cast.surgeon
    surgeon.client.handler.enforce_csrf_checks = True
    surgeon.client.cookies["csrftoken"] = TOKEN
    response = surgeon.client.post(
        f"/api/v1/clinics/{cast.clinic.pk}/push",
        content,
        content_type="application/json",
        headers={"X-CSRFToken": TOKEN, "Content-Encoding": encoding},
    )

    assert (response.status_code, response.json()["errors"][0]["code"]) == (status, code)
