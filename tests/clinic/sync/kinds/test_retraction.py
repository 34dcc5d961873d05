"""A record is taken back by whoever may write its kind; the retraction stays."""

import pytest

from tests.clinic.pen import uuid7


@pytest.fixture
def line(cast):
    records = cast.surgeon.pen.line()
    cast.surgeon.accepted(*records)
    return dict(zip(("patient", "examination", "plan", "signature"), records, strict=True))


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["retryable"]


@pytest.mark.parametrize(
    ("who", "kinds"),
    [
        ("surgeon", {"patient", "examination", "plan", "signature"}),
        ("orthoptist", {"patient", "examination", "plan"}),
        ("coordinator", {"patient"}),
    ],
)
def test_a_role_takes_back_what_it_may_write(cast, line, who, kinds):
    person = getattr(cast, who)
    for kind, record in line.items():
        (result,) = person.results(person.pen.retraction(record))

        assert (result["status"] == "accepted") == (kind in kinds), kind
        assert result["code"] in (None, "role_may_not")


def test_theatre_takes_nothing_back(cast, line):
    assert reason(cast.theatre_nurse, cast.theatre_nurse.pen.retraction(line["plan"])) == ("role_may_not", False)


def test_a_retraction_waits_for_the_record_that_it_takes_back(cast, line):
    missing = line["plan"] | {"id": uuid7()}

    assert reason(cast.surgeon, cast.surgeon.pen.retraction(missing)) == ("reference_unknown", True)


def test_a_retraction_names_the_patient_of_the_record(cast, line):
    other = cast.surgeon.pen.patient(hospital_number="H-2")
    cast.surgeon.accepted(other)

    crossed = cast.surgeon.pen.retraction(line["plan"]) | {"patient": other["id"]}

    assert reason(cast.surgeon, crossed) == ("patient_differs", False)


def test_a_retraction_cannot_be_taken_back(cast, line):
    retraction = cast.surgeon.pen.retraction(line["plan"])
    cast.surgeon.accepted(retraction)

    assert reason(cast.surgeon, cast.surgeon.pen.retraction(retraction)) == ("retraction_of_retraction", False)


def test_a_retraction_supersedes_nothing(cast, line):
    retraction = cast.surgeon.pen.retraction(line["plan"]) | {"supersedes": [line["plan"]["id"]]}

    assert reason(cast.surgeon, retraction) == ("supersedes_not_allowed", False)
