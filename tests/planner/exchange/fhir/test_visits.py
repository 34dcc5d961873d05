"""A patient who was seen after an operation: each visit is an Encounter, what was measured at it a part of it."""

import json
import warnings

import pytest

from tests.planner.exchange.fhir.bundles import TWO_YEARS, by_id, exported, followed, resources, rows_of, taken

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from fhir.resources.R4B import get_fhir_model_class

ENVELOPE = ("id", "kind", "patient", "supersedes", "digest", "body")


@pytest.fixture(scope="module")
def records():
    return followed()


@pytest.fixture
def bundle(records):
    return json.loads(json.dumps(exported(records)))


@pytest.fixture(scope="module")
def visits(records):
    return [each for each in records if each["kind"] == "follow_up"]


def measured_at(visit):
    return visit["body"].get("examination_id")


def brought(bundle, records):
    (signer,) = {each["body"]["signer_name"] for each in records if each["kind"] == "signature"}
    taking = taken(bundle, full_name=signer, clinic=TWO_YEARS["clinic"]["id"])
    return taking, [{name: each[name] for name in ENVELOPE} for each in taking["records"]]


def as_they_were(records):
    return [{name: each[name] for name in ENVELOPE} for each in records]


@pytest.mark.check_value
def test_every_resource_of_a_patient_with_visits_is_valid_fhir(bundle, visits):
    """By the models of fhir.resources (R4B, in which an Encounter is as it is in R4)."""
    for each in resources(bundle):
        get_fhir_model_class(each["resourceType"]).model_validate(each)

    assert len(visits) > 2
    assert {by_id(bundle, visit["id"])["resourceType"] for visit in visits} == {"Encounter"}


def test_a_patient_with_visits_comes_back_as_they_went(bundle, records):
    taking, back = brought(bundle, records)

    assert back == as_they_were(records)
    assert rows_of(taking, "not taken") == []


@pytest.mark.check_value
def test_what_was_measured_is_a_part_of_the_visit_and_not_the_visit_of_it(bundle, visits):
    """FHIR R4, Encounter.partOf: "Another Encounter of which this encounter is a part of"."""
    measured = {measured_at(visit): visit["id"] for visit in visits if measured_at(visit)}
    parts = {
        each["id"]: each["partOf"]["reference"].removeprefix("Encounter/")
        for each in resources(bundle, "Encounter")
        if "partOf" in each
    }

    assert len(measured) > 1
    assert parts == measured


def test_a_visit_says_which_operation_it_is_after(bundle, visits):
    for visit in visits:
        reasons = by_id(bundle, visit["id"])["reasonReference"]
        assert reasons == [{"reference": f"Procedure/{visit['body']['operation_id']}"}]


def test_a_visit_that_was_replaced_hands_its_part_on(records, visits):
    visit = next(each for each in visits if measured_at(each))
    later = {**visit, "id": "0192f0c1-0000-7000-8000-000000000001", "supersedes": [visit["id"]]}
    bundle = exported([*records, later])

    assert by_id(bundle, visit["id"])["status"] == "entered-in-error"
    assert by_id(bundle, measured_at(visit))["partOf"] == {"reference": f"Encounter/{later['id']}"}


def test_a_file_of_an_earlier_release_that_had_it_the_other_way_round_still_comes_in(bundle, records, visits):
    for visit in visits:
        if examination := measured_at(visit):
            del by_id(bundle, examination)["partOf"]
            by_id(bundle, visit["id"])["partOf"] = {"reference": f"Encounter/{examination}"}
    taking, back = brought(bundle, records)

    assert back == as_they_were(records)
    assert rows_of(taking, "not taken") == []


def test_a_visit_that_was_made_a_part_of_something_else_is_not_taken(bundle, records, visits):
    visit, other = visits[0], next(each for each in records if each["kind"] == "examination")
    by_id(bundle, visit["id"])["partOf"] = {"reference": f"Encounter/{other['id']}"}
    taking, back = brought(bundle, records)

    assert other["id"] != measured_at(visit)
    assert visit["id"] not in {each["id"] for each in back}
    assert "altered" in {row["code"] for row in rows_of(taking, "not taken")}
