"""Whatever is pushed is answered, record by record, and never with a fault of the server."""

import copy
import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from clinic.ledger.models import Record
from tests.clinic.pen import uuid7

NUMBERS = st.integers() | st.floats(allow_nan=False, allow_infinity=False)
SCALARS = st.none() | st.booleans() | NUMBERS | st.text(max_size=30)
JSON = st.recursive(
    SCALARS,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=8,
)
FEW = settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
KEYS = {"id", "status", "position", "received_at", "receipt", "code", "text", "field", "retryable"}


def places(value, path=()):
    """Every place in a nested value."""
    yield path
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, each in inner:
        yield from places(each, (*path, key))


def put(value, path, new):
    """The value with something else in one place."""
    if not path:
        return new
    whole = copy.deepcopy(value)
    inner = whole
    for key in path[:-1]:
        inner = inner[key]
    inner[path[-1]] = new
    return whole


@pytest.fixture
def surgeon(cast):
    cast.surgeon.client.raise_request_exception = True
    return cast.surgeon


@FEW
@given(st.lists(JSON, max_size=4))
def test_anything_in_the_place_of_records_is_rejected_one_by_one(surgeon, records):
    results = surgeon.results(*records)

    assert [result["status"] for result in results] == ["rejected"] * len(records)
    for result in results:
        assert result.keys() == KEYS
        assert result["code"] != "server_fault", result


@FEW
@given(JSON)
def test_anything_as_the_whole_body_is_answered_in_the_one_shape(surgeon, body):
    address = f"/api/v1/clinics/{surgeon.clinic.pk}/push"
    response = surgeon.client.post(address, json.dumps(body), content_type="application/json")

    assert response.status_code == 400
    assert response.json()["errors"][0]["code"]


@FEW
@given(st.data())
def test_a_good_record_with_one_thing_changed_is_taken_whole_or_rejected_for_a_reason(surgeon, data):
    patient = surgeon.pen.patient()
    record = data.draw(st.sampled_from([patient, surgeon.pen.examination(patient), surgeon.pen.retraction(patient)]))
    changed = put(record, data.draw(st.sampled_from(list(places(record)))), data.draw(JSON | st.just(uuid7())))
    before = Record.objects.count()
    (result,) = surgeon.results(changed)

    assert result["code"] != "server_fault", changed
    assert (result["status"] == "rejected") == (result["code"] is not None)
    assert Record.objects.count() - before == (result["status"] == "accepted")
