"""What went out comes back the same, once, and what was changed on the way does not."""

import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.canonical import digest
from planner.codec import KINDS, write
from planner.records.examination import Examination
from planner.records.patient import Patient
from tests.planner.exchange.fhir.bundles import CLINIC, DEMO, by_id, demo, exported, resources, rows_of, taken
from tests.planner.strategies import values_of

ENVELOPE = ("id", "kind", "patient", "supersedes", "digest", "body")


def told(records):
    return [{name: record[name] for name in ENVELOPE} for record in records]


def test_the_whole_demo_clinic_comes_back_as_it_went():
    taking = taken(demo())

    assert told(taking["records"]) == told(DEMO["records"])
    assert rows_of(taking, "not taken") == []
    assert len(taking["rows"]) == len(demo()["entry"])


def test_what_is_here_already_is_not_taken_again():
    held = [{"id": record["id"], "digest": record["digest"]} for record in DEMO["records"]]
    taking = taken(demo(), held=held)

    assert taking["records"] == []
    assert len(rows_of(taking, "here already")) == len(DEMO["records"])


def test_another_content_under_a_known_id_is_refused():
    record = DEMO["records"][0]
    taking = taken(exported([record]), held=[{"id": record["id"], "digest": "0" * 64}])

    assert taking["records"] == []
    assert "differs" in {row["code"] for row in rows_of(taking, "not taken")}


def _by_hand(record, number, kind, body):
    said = json.loads(json.dumps(write(body)))
    record_id = f"0192f0c1-0000-7000-8000-{number:012x}"
    return record | {"id": record_id, "kind": kind, "body": said, "digest": digest(said), "supersedes": []}


@given(st.data())
@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
def test_any_patient_and_examination_come_back_as_they_went(data):
    like = DEMO["records"][0]
    patient = _by_hand(like, 1, "patient", data.draw(values_of(Patient)))
    patient["patient"] = patient["id"]
    examination = _by_hand(like, 2, "examination", data.draw(values_of(Examination))) | {"patient": patient["id"]}
    taking = taken(exported([patient, examination]))

    assert told(taking["records"]) == told([patient, examination])


ALTERATIONS = {
    "an eye": lambda plan: plan["orderDetail"][0]["extension"][0].update(valueCode="left"),
    "a figure": lambda plan: plan["orderDetail"][0]["extension"][2]["valueQuantity"].update(value=9.5),
    "a status": lambda plan: plan.update(status="on-hold"),
    "a word": lambda plan: plan["code"].update(text="Something else"),
}


@pytest.mark.parametrize("what", sorted(ALTERATIONS))
def test_a_resource_that_was_changed_beside_its_record_is_not_taken(what):
    bundle = demo()
    plan = resources(bundle, "ServiceRequest")[0]
    ALTERATIONS[what](plan)
    taking = taken(bundle)
    row = next(row for row in taking["rows"] if row["resource"] == f"ServiceRequest/{plan['id']}")

    assert (row["fate"], row["code"]) == ("not taken", "altered")
    assert plan["id"] not in {each["id"] for each in taking["records"]}


def test_a_changed_body_is_not_taken():
    bundle = demo()
    patient = resources(bundle, "Patient")[0]
    body = next(each for each in patient["extension"][0]["extension"] if each["url"] == "body")
    body["valueString"] = body["valueString"].replace("female", "male")
    row = taken(bundle)["rows"][0]

    assert (row["fate"], row["code"]) == ("not taken", "digest_mismatch")


def test_what_follows_from_a_refused_record_is_refused_with_it():
    bundle = demo()
    examination = resources(bundle, "Encounter")[0]
    by_id(bundle, f"{examination['id']}-o0")["valueQuantity"]["value"] = 3
    refused = {row["resource"]: row["code"] for row in rows_of(taken(bundle), "not taken")}
    plans = [
        record["id"]
        for record in DEMO["records"]
        if record["kind"] == "plan" and record["body"]["examination_id"] == examination["id"]
    ]

    assert refused[f"Encounter/{examination['id']}"] == "altered"
    assert refused[f"Observation/{examination['id']}-o0"] == "record_not_taken"
    assert {refused[f"ServiceRequest/{each}"] for each in plans} <= {"reference_unknown"}


def test_a_signature_is_brought_by_its_signer_alone_and_the_operation_waits_for_it():
    codes = {row["code"] for row in rows_of(taken(demo(), full_name="Dr Somebody Else"), "not taken")}

    assert codes >= {"signer_differs", "reference_unknown"}


def test_a_role_brings_only_what_it_may_write():
    taking = taken(demo(), may=["patient"])

    assert {each["kind"] for each in taking["records"]} == {"patient"}
    assert "role_may_not" in {row["code"] for row in rows_of(taking, "not taken")}
    assert set(KINDS) > {"patient"}


@pytest.mark.parametrize(
    "bundle", [None, [], {}, {"resourceType": "Patient"}, {"resourceType": "Bundle", "entry": 3}, "text"]
)
def test_what_is_no_bundle_is_refused_in_words(bundle):
    assert taken(bundle)[0]["code"] in ("not_a_bundle", "too_long")


def test_every_entry_has_a_row_whatever_it_is():
    bundle = {"resourceType": "Bundle", "entry": [None, {}, {"resource": 3}, {"resource": {"resourceType": "Device"}}]}

    assert [(row["place"], row["fate"]) for row in taken(bundle)["rows"]] == [(n, "not taken") for n in (1, 2, 3, 4)]
    assert CLINIC
