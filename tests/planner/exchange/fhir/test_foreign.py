"""Of other programs' Bundles patients and plain deviations are taken, and all else is told not to be."""

import copy

import pytest

from planner.codec import read_body
from tests.planner.exchange.fhir.bundles import CLINIC, rows_of, taken

CODES = "https://primary-position.example/fhir/CodeSystem/strabismus"


def own(code):
    return {"coding": [{"system": CODES, "code": code}]}


PATIENT = {
    "resourceType": "Patient",
    "id": "pat-1",
    "identifier": [{"system": "urn:example:hospital", "value": "OI-0999"}],
    "name": [{"family": "Vrell", "given": ["Ana", "Maria"]}],
    "gender": "female",
    "birthDate": "2019-05-06",
    "telecom": [{"system": "phone", "value": "1"}],
}


def observation(number, direction, size, range_="distance", code="deviation-horizontal"):
    return {
        "resourceType": "Observation",
        "id": f"obs-{number}",
        "status": "final",
        "code": own(code),
        "subject": {"reference": "Patient/pat-1"},
        "effectiveDateTime": "2026-05-04T10:00:00Z",
        "valueQuantity": {"value": size, "system": "http://unitsofmeasure.org", "code": "[p'diop]"},
        "component": [
            {"code": own("direction"), "valueCodeableConcept": own(direction)},
            {"code": own("gaze"), "valueCodeableConcept": own("gaze-primary")},
            {"code": own("range"), "valueCodeableConcept": own(f"range-{range_}")},
            {"code": own("correction"), "valueCodeableConcept": own("correction-with")},
        ],
    }


def bundle(*resources):
    return {"resourceType": "Bundle", "type": "collection", "entry": [{"resource": each} for each in resources]}


def whole():
    return bundle(
        PATIENT,
        observation(1, "exo", 30),
        observation(2, "left-hyper", 4, code="deviation-vertical"),
        observation(3, "exo", 35, "near"),
    )


def test_a_patient_and_the_readings_of_a_day_are_taken():
    taking = taken(whole())
    patient, examination = taking["records"]

    assert [row["fate"] for row in taking["rows"]] == ["taken", "taken", "with its record", "with its record"]
    assert (patient["body"]["full_name"], patient["body"]["hospital_number"]) == ("Ana Maria Vrell", "OI-0999")
    assert [
        (each["range"], each["horizontal_pd"], each["vertical_pd"]) for each in examination["body"]["readings"]
    ] == [("distance", -30.0, -4.0), ("near", -35.0, None)]
    assert examination["patient"] == patient["id"]
    assert read_body("examination", examination["body"]).examined_on == "2026-05-04"


def test_what_is_left_of_a_resource_is_told():
    assert taken(whole())["rows"][0]["text"] == "Not taken of it: telecom."


def test_the_same_bundle_makes_the_same_records_and_none_the_second_time():
    first = taken(whole())["records"]
    held = [{"id": each["id"], "digest": each["digest"]} for each in first]

    assert taken(whole())["records"] == first
    assert taken(whole(), held=held)["records"] == []


def test_another_clinic_has_other_ids():
    ids = {each["id"] for each in taken(whole())["records"]}
    others = {each["id"] for each in taken(whole(), clinic=CLINIC.replace("5", "6"))["records"]}

    assert ids.isdisjoint(others)


def changed(**fields):
    return {name: value for name, value in (copy.deepcopy(PATIENT) | fields).items() if value is not None}


@pytest.mark.parametrize(
    ("patient", "field"),
    [
        (changed(birthDate="2019"), "born_on"),
        (changed(birthDate=None), "born_on"),
        (changed(identifier=None), "identifier"),
        (changed(name=[]), "name"),
        (changed(gender="f"), "sex"),
    ],
)
def test_a_patient_who_cannot_be_told_is_refused_with_the_readings(patient, field):
    taking = taken(bundle(patient, observation(1, "exo", 30)))

    assert taking["records"] == []
    assert [row["field"] for row in rows_of(taking, "not taken")] == [field, "subject"]


def without(part):
    said = observation(1, "exo", 30)
    said["component"] = [each for each in said["component"] if each["code"] != own(part)]
    return said


@pytest.mark.parametrize(
    ("observed", "field"),
    [
        (observation(1, "exo", -30), "valueQuantity"),
        (observation(1, "right-hyper", 30), "component"),
        (observation(1, "none", 30), "component"),
        (observation(1, "exo", 0), "component"),
        (without("direction"), "component"),
        (without("gaze"), "component"),
        (without("correction"), "component"),
        (observation(1, "exo", 30) | {"status": "preliminary"}, "status"),
        (observation(1, "exo", 30) | {"valueQuantity": {"value": 30, "unit": "degrees"}}, "valueQuantity"),
        (observation(1, "exo", 300), "readings.0.horizontal_pd"),
        (observation(1, "exo", 30) | {"code": {"text": "deviation"}}, ""),
    ],
)
def test_a_reading_that_leaves_something_open_is_refused_with_its_field(observed, field):
    taking = taken(bundle(PATIENT, observed))

    assert [row["field"] for row in rows_of(taking, "not taken")] == [field]
    assert [each["kind"] for each in taking["records"]] == ["patient"]


def test_two_readings_that_nothing_tells_apart_are_refused_together():
    taking = taken(bundle(PATIENT, observation(1, "exo", 30), observation(2, "exo", 32)))

    assert [row["code"] for row in rows_of(taking, "not taken")] == ["repeated", "repeated"]
