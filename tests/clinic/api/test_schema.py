"""The OpenAPI description is valid, and real requests and answers are as it says."""

import copy
import json

import pytest
from openapi_schema_validator import OAS31Validator, oas31_format_checker
from openapi_spec_validator import validate
from rest_framework.settings import api_settings

from planner.codec import KINDS
from tests.clinic.pen import EXAMINATION, TABLE

CASE = {"schema": 1, "examination": EXAMINATION, "table": TABLE}


@pytest.fixture
def description(client):
    return client.get("/api/v1/schema").json()


def faults(description, schema, value):
    """What the description says against a value; the whole document is the place that references point into."""
    document = {"$ref": "#/it", "it": schema, "components": description["components"]}
    validator = OAS31Validator(document, format_checker=oas31_format_checker)
    return [(list(error.absolute_path), error.message[:200]) for error in validator.iter_errors(value)]


def answer_schema(description, path, method, status, kind="application/json"):
    return description["paths"][path][method]["responses"][status]["content"][kind]["schema"]


def test_the_description_is_valid_openapi(description):
    validate(description)


def test_the_description_names_every_call_of_the_contract(description):
    calls = {(path, method) for path, methods in description["paths"].items() for method in methods}

    assert calls == {
        ("/health", "get"),
        ("/ready", "get"),
        ("/api/v1/session", "get"),
        ("/api/v1/session", "post"),
        ("/api/v1/session", "delete"),
        ("/api/v1/clinics/{clinic}/push", "post"),
        ("/api/v1/clinics/{clinic}/pull", "get"),
        ("/api/v1/clinics/{clinic}/cards/{signature}.pdf", "get"),
        ("/api/v1/propose", "post"),
        ("/api/v1/clinics/{clinic}/recovery", "get"),
        ("/api/v1/clinics/{clinic}/recovery", "put"),
        ("/api/v1/carrying", "get"),
        ("/api/v1/devices", "get"),
        ("/api/v1/devices/{device}", "delete"),
        ("/api/v1/devices/{device}", "patch"),
    }


def test_every_call_describes_its_errors(description):
    for methods in description["paths"].values():
        for operation in methods.values():
            schema = operation["responses"]["default"]["content"]["application/json"]["schema"]
            assert schema == {"$ref": "#/components/schemas/Errors"}


def test_every_kind_of_record_is_described(description):
    assert {cls.__name__ for cls in KINDS.values()} <= description["components"]["schemas"].keys()


@pytest.mark.parametrize(
    ("path", "address"),
    [
        ("/health", "/health"),
        ("/ready", "/ready"),
        ("/api/v1/session", "/api/v1/session"),
        ("/api/v1/devices", "/api/v1/devices"),
        ("/api/v1/clinics/{clinic}/pull", "/api/v1/clinics/{clinic}/pull?device={device}"),
    ],
)
def test_a_read_answers_as_described(cast, description, path, address):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    answer = cast.surgeon.client.get(address.format(clinic=cast.clinic.pk, device=cast.surgeon.device)).json()

    assert faults(description, answer_schema(description, path, "get", "200"), answer) == []


def test_a_pull_hands_out_records_that_fit_the_description_and_it_would_notice_if_not(cast, description):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    schema = answer_schema(description, "/api/v1/clinics/{clinic}/pull", "get", "200")
    page = cast.surgeon.page()
    assert [record["kind"] for record in page["records"]] == ["patient", "examination", "plan", "signature"]

    for record, field in zip(page["records"], ("full_name", "readings", "option", "check_word"), strict=True):
        broken = copy.deepcopy(page)
        del broken["records"][page["records"].index(record)]["body"][field]
        assert faults(description, schema, broken)


def test_a_push_takes_and_answers_what_is_described(cast, description):
    path = "/api/v1/clinics/{clinic}/push"
    request = description["paths"][path]["post"]["requestBody"]["content"]["application/json"]["schema"]
    line = cast.surgeon.pen.line()
    poison = cast.surgeon.pen.patient(full_name="")

    answer = cast.surgeon.push(*line, line[0], poison).json()

    assert faults(description, request, {"device": cast.surgeon.device, "records": line}) == []
    assert faults(description, request, {"device": cast.surgeon.device, "records": [poison]})
    assert faults(description, answer_schema(description, path, "post", "200"), answer) == []
    assert {result["status"] for result in answer["results"]} == {"accepted", "duplicate", "rejected"}


def test_a_proposal_is_as_described_and_so_is_its_case(cast, description):
    request = description["paths"]["/api/v1/propose"]["post"]["requestBody"]["content"]["application/json"]["schema"]
    answer = cast.surgeon.client.post("/api/v1/propose", json.dumps(CASE), content_type="application/json").json()

    assert faults(description, request, CASE) == []
    assert faults(description, request, CASE | {"hurry": True})
    assert faults(description, answer_schema(description, "/api/v1/propose", "post", "200"), answer) == []


def test_a_sign_in_is_as_described(client, cast, description):
    body = {
        "username": "amara",
        "password": "wrong",
        "device": {"id": "0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10", "name": "Phone"},
    }
    operation = description["paths"]["/api/v1/session"]["post"]
    refusal = client.post("/api/v1/session", json.dumps(body), content_type="application/json")

    assert faults(description, operation["requestBody"]["content"]["application/json"]["schema"], body) == []
    assert refusal.status_code == 401
    assert faults(description, answer_schema(description, "/api/v1/session", "post", "default"), refusal.json()) == []


def test_the_frameworks_own_pages_are_not_served():
    assert [cls.__name__ for cls in api_settings.DEFAULT_RENDERER_CLASSES] == ["JSONRenderer"]
