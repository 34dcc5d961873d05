"""A plan enters only if it is the engine's own answer to the examination and the patient that it names."""

import copy

import pytest

from planner.canonical import digest
from planner.version import ENGINE_VERSION
from tests.clinic.pen import uuid7

NOTE = {
    "code": "invented",
    "text": "The engine never said this.",
    "level": "note",
    "facts": {},
    "provenance": {"mark": "house rule", "source": "a test"},
}


@pytest.fixture
def line(cast):
    """Patient, examination and plan; the first two are in the ledger."""
    patient, examination, plan, _ = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, examination)
    return patient, examination, plan


def changed(record, *path, to):
    """A record with one figure of its body changed and a digest that fits."""
    body = copy.deepcopy(record["body"])
    place = body
    for step in path[:-1]:
        place = place[step]
    place[path[-1]] = to
    return record | {"body": body, "digest": digest(body)}


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["retryable"]


def test_the_engines_plan_enters(cast, line):
    assert cast.surgeon.results(line[2])[0]["status"] == "accepted"


@pytest.mark.parametrize(
    ("path", "to"),
    [
        (("option", "doses", 0, "mm"), 5.0),
        (("option", "doses", 0, "eye"), "left"),
        (("option", "doses", 0, "operation"), "resect"),
        (("option", "doses", 0, "limbus_mm"), 9.0),
        (("option", "expected_residual_pd"), 0.5),
        (("option", "notices"), [NOTE]),
        (("table", "name"), "Another table"),
        (("case", "changes"), [{"option": "recess-both-mr", "eye": "right", "muscle": "MR", "mm": 2.0}]),
    ],
    ids=lambda value: ".".join(map(str, value)) if isinstance(value, tuple) else "",
)
def test_a_plan_with_one_thing_changed_is_refused(cast, line, path, to):
    assert line[2]["body"] != changed(line[2], *path, to=to)["body"]
    assert reason(cast.surgeon, changed(line[2], *path, to=to)) == ("plan_differs", False)


def test_a_plan_of_another_engine_version_is_taken_as_it_is(cast, line):
    older = changed(line[2], "engine_version", to="0.9.0")

    assert older["body"]["engine_version"] != ENGINE_VERSION
    assert cast.surgeon.results(older)[0]["status"] == "accepted"


def test_a_stop_is_refused_whatever_the_engine_version(cast, line):
    stop = NOTE | {"level": "stop"}
    stopped = changed(changed(line[2], "engine_version", to="0.9.0"), "option", "notices", to=[stop])

    assert reason(cast.surgeon, stopped) == ("plan_has_stop", False)


@pytest.mark.parametrize("name", ["patient_id", "examination_id"])
def test_a_plan_waits_for_the_records_that_it_names(cast, line, name):
    assert reason(cast.surgeon, changed(line[2], name, to=uuid7())) == ("reference_unknown", True)


def test_a_plan_of_another_content_of_the_patients_record_is_refused(cast, line):
    assert reason(cast.surgeon, changed(line[2], "patient_digest", to="0" * 64)) == ("patient_digest_differs", False)


def test_a_plan_of_another_content_of_the_examination_is_refused(cast, line):
    wrong = changed(line[2], "examination_digest", to="0" * 64)

    assert reason(cast.surgeon, wrong) == ("examination_digest_differs", False)


def test_a_plan_whose_case_is_not_the_examination_that_it_names_is_refused(cast, line):
    pen = cast.surgeon.pen
    patient, examination, _ = line
    milder = pen.examination(patient, readings=[examination["body"]["readings"][0] | {"horizontal_pd": 20}])
    plan = pen.plan(patient, milder)
    crossed = changed(
        changed(plan, "examination_id", to=examination["id"]), "examination_digest", to=examination["digest"]
    )

    assert reason(cast.surgeon, crossed) == ("case_differs", False)


def test_a_plan_for_another_date_of_birth_is_refused(cast):
    pen = cast.surgeon.pen
    patient = pen.patient()
    examination = pen.examination(patient)
    older = patient | {"body": patient["body"] | {"born_on": "2009-04-02"}}
    cast.surgeon.accepted(patient, examination)

    assert reason(cast.surgeon, pen.plan(older, examination)) == ("case_differs", False)


def test_a_plan_cannot_name_another_patients_records(cast, line):
    other, measured, plan, _ = cast.surgeon.pen.line(hospital_number="H-2")
    cast.surgeon.accepted(other, measured)

    assert reason(cast.surgeon, plan | {"patient": line[0]["id"]}) == ("patient_differs", False)


def test_a_plan_names_the_version_of_the_patient_that_it_was_made_for(cast, line):
    patient, examination, _ = line
    corrected = cast.surgeon.pen.patient_again(patient, hospital_number="H-9")
    cast.surgeon.accepted(corrected)

    assert cast.surgeon.results(cast.surgeon.pen.plan(corrected, examination))[0]["status"] == "accepted"


def test_an_examination_that_leaves_out_what_has_a_default_still_fits_its_plan(cast):
    """The digest is of the text as the device wrote it; the case is compared by its values."""
    pen = cast.surgeon.pen
    patient = pen.patient()
    examination = pen.examination(patient)
    assert "note" not in examination["body"]
    plan = pen.plan(patient, examination)
    assert "note" in plan["body"]["case"]["examination"]

    cast.surgeon.accepted(patient, examination, plan)
