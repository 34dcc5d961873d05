"""What is exported is FHIR to a library that knows nothing of us, hangs together, and says sides and directions."""

import base64
import json
import re
import warnings

import pytest

from planner.desk import answer
from planner.exchange.fhir import code_system
from planner.exchange.fhir.names import CODES
from tests.planner.exchange.fhir.bundles import DEMO, asked, by_id, demo, exported, of_kind, resources

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from fhir.resources.R4B import get_fhir_model_class


def _strings(value):
    if isinstance(value, dict):
        yield value
        for each in value.values():
            yield from _strings(each)
    elif isinstance(value, list):
        for each in value:
            yield from _strings(each)


def _signed():
    """The records of a patient whose plan was operated on, and the page of the card."""
    operation = of_kind("operation")[0]
    records = [each for each in DEMO["records"] if each["patient"] == operation["patient"]]
    body = {each["id"]: each["body"] for each in records}
    plan = body[operation["body"]["plan_id"]]
    signature_id = operation["body"]["signature_id"]
    pages = {"patient": body[plan["patient_id"]], "plan": plan, "signature": body[signature_id]}
    return operation, records, {"signature_id": signature_id, "pdf": asked("card_pdf", **pages)["pdf"]}


@pytest.mark.check_value
def test_every_resource_of_the_demo_clinic_is_valid_fhir():
    """By the models of fhir.resources (R4B, which left every resource used here as it is in R4)."""
    found = {(each["resourceType"], each["id"]): each for each in resources(demo())}
    for each in found.values():
        get_fhir_model_class(each["resourceType"]).model_validate(each)

    assert len(found) == len(resources(demo()))
    assert {kind for kind, _ in found} >= {
        "Patient",
        "Encounter",
        "Observation",
        "ServiceRequest",
        "Procedure",
        "Provenance",
        "Condition",
        "CodeSystem",
    }


@pytest.mark.check_value
def test_a_bundle_with_a_card_is_valid_fhir_and_the_card_comes_back():
    _, records, card = _signed()
    bundle = exported(records, [card])
    get_fhir_model_class("Bundle").model_validate(bundle)
    (document,) = resources(bundle, "DocumentReference")
    attachment = document["content"][0]["attachment"]

    assert base64.b64decode(attachment["data"]).startswith(b"%PDF")
    assert document["status"] == "current"


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("kind", "name"),
    [
        ("ServiceRequest", "status"),
        ("ServiceRequest", "intent"),
        ("Procedure", "status"),
        ("Patient", "gender"),
    ],
)
def test_words_are_of_the_required_value_sets(kind, name):
    """As fhir.resources lists them beside the field; of others it lists a part alone."""
    field = get_fhir_model_class(kind).model_fields[name]
    allowed = set(field.json_schema_extra["enum_values"])

    assert allowed
    assert {each[name] for each in resources(demo(), kind)} <= allowed


def test_every_reference_leads_to_a_resource_of_the_bundle():
    bundle = demo()
    there = {f"{each['resourceType']}/{each['id']}" for each in resources(bundle)}
    said = {each["reference"] for each in _strings(bundle) if isinstance(each.get("reference"), str)}

    assert said
    assert said <= there


def test_ids_are_stable_and_of_the_form_that_fhir_asks_for():
    ids = [each["id"] for each in resources(demo())]

    assert all(re.fullmatch(r"[A-Za-z0-9\-.]{1,64}", each) for each in ids)
    assert [each["id"] for each in resources(exported(DEMO["records"]))] == ids
    assert {each["id"] for each in DEMO["records"]} <= set(ids)


def test_every_own_code_that_is_used_is_defined():
    used = {each["code"] for each in _strings(demo()) if each.get("system") == CODES}
    defined = {each["code"] for each in code_system()["concept"]}

    assert used
    assert used <= defined
    assert all(re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", each) for each in defined)


def test_only_open_systems_and_our_own_are_named():
    """No code of a terminology that needs a licence or was quoted from memory."""
    systems = {each["system"] for each in _strings(demo()) if isinstance(each.get("system"), str)}

    assert all(
        re.match(
            r"https://primary-position\.example/|http://terminology\.hl7\.org/|http://unitsofmeasure\.org$|"
            r"http://hl7\.org/fhir/sid/icd-10$",
            each,
        )
        for each in systems
    )


def test_a_deviation_is_a_size_with_its_direction_gaze_and_distance_in_words():
    examination = of_kind("examination")[0]
    first = examination["body"]["readings"][0]
    observed = by_id(demo(), f"{examination['id']}-o0")
    parts = {
        part["code"]["coding"][0]["code"]: part["valueCodeableConcept"]["coding"][0]["code"]
        for part in observed["component"]
        if "valueCodeableConcept" in part
    }

    assert observed["valueQuantity"] == {
        "value": abs(first["horizontal_pd"]),
        "unit": "prism dioptre",
        "system": "http://unitsofmeasure.org",
        "code": "[p'diop]",
    }
    assert parts["direction"] == ("eso" if first["horizontal_pd"] > 0 else "exo")
    assert (parts["gaze"], parts["range"]) == (f"gaze-{first['gaze']}", f"range-{first['range']}")
    assert all(
        each["valueQuantity"]["value"] >= 0 for each in resources(demo(), "Observation") if "valueQuantity" in each
    )


def test_what_was_signed_is_an_order_and_says_eye_muscle_and_millimetres():
    operation, records, _ = _signed()
    plan = next(each for each in records if each["id"] == operation["body"]["plan_id"])
    request = by_id(exported(records), plan["id"])
    dose = plan["body"]["option"]["doses"][0]
    told = {each["url"].rsplit("/", 1)[1]: each for each in request["orderDetail"][0]["extension"]}

    assert (request["status"], request["intent"]) == ("completed", "order")
    assert (told["eye"]["valueCode"], told["muscle"]["valueCode"]) == (dose["eye"], dose["muscle"])
    assert told["amount"]["valueQuantity"]["value"] == dose["mm"]


def test_what_was_taken_back_no_longer_counts():
    bundle = demo()
    (retraction,) = of_kind("retraction")
    gone = by_id(bundle, retraction["body"]["record_id"])

    assert gone.get("status", "revoked") in ("revoked", "entered-in-error")


def test_provenance_says_who_when_which_device_table_and_engine():
    plan = of_kind("plan")[0]
    made = by_id(demo(), f"{plan['id']}-made")
    words = json.dumps(made)

    assert made["recorded"] == plan["recorded_at"]
    assert plan["device"] in words
    assert plan["author"] in words
    assert f"Engine {plan['body']['engine_version']}" in words
    assert plan["body"]["table"]["id"] in words


def test_a_record_whose_digest_is_not_its_own_is_not_exported():
    record = DEMO["records"][0] | {"digest": "0" * 64}
    said = json.loads(
        answer(
            json.dumps(
                {
                    "ask": "fhir_export",
                    "records": [record],
                    "cards": [],
                    "export_id": record["id"],
                    "exported_at": record["recorded_at"],
                }
            )
        )
    )

    assert said["faults"][0]["code"] == "digest_mismatch"
