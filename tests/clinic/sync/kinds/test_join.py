"""Two patients are joined and parted again, and nothing of either is changed."""

import pytest

from tests.clinic.pen import uuid7


@pytest.fixture
def two(cast):
    """One person, entered on two phones."""
    first, second = cast.surgeon.pen.patient(), cast.orthoptist.pen.patient(hospital_number="H 1042")
    cast.surgeon.accepted(first)
    cast.orthoptist.accepted(second)
    return first, second


def join(pen, first, second, **envelope):
    body = {"schema": 1, "patient_a": first["id"], "patient_b": second["id"], "reason": "Entered on two phones."}
    return pen.record("join", first["patient"], body, **envelope)


def code(cast, record):
    (result,) = cast.surgeon.results(record)
    return result["code"], result["retryable"]


def test_a_join_is_taken_and_taken_back(cast, two):
    joined = join(cast.surgeon.pen, *two)
    cast.surgeon.accepted(joined)
    cast.orthoptist.accepted(cast.orthoptist.pen.retraction(joined, "They are cousins."))

    records, _ = cast.surgeon.everything()
    assert [record["kind"] for record in records] == ["patient", "patient", "join", "retraction"]
    assert records[:2] == [record | {key: records[place][key] for key in ("position", "received_at", "receipt")}
                           for place, record in enumerate(two)]  # fmt: skip


def test_nobody_is_joined_to_themselves(cast, two):
    assert code(cast, join(cast.surgeon.pen, two[0], two[0])) == ("joined_to_itself", False)


def test_a_join_stands_with_its_first_patient(cast, two):
    record = join(cast.surgeon.pen, *two) | {"patient": two[1]["id"]}

    assert code(cast, record) == ("patient_differs", False)


def test_a_patient_who_has_not_arrived_yet_may_still_come(cast, two):
    unknown = {"id": uuid7(), "patient": uuid7()}

    assert code(cast, join(cast.surgeon.pen, two[0], unknown)) == ("reference_unknown", True)


def test_only_patients_are_joined(cast, two):
    examination = cast.surgeon.pen.examination(two[0])
    cast.surgeon.accepted(examination)

    assert code(cast, join(cast.surgeon.pen, two[0], examination)) == ("reference_kind", False)


def test_a_patient_is_named_by_the_first_version(cast, two):
    again = cast.surgeon.pen.patient_again(two[1])
    cast.surgeon.accepted(again)

    assert code(cast, join(cast.surgeon.pen, two[0], again)) == ("patient_differs", False)


def test_a_join_supersedes_nothing(cast, two):
    joined = join(cast.surgeon.pen, *two)
    cast.surgeon.accepted(joined)

    assert code(cast, join(cast.surgeon.pen, *two, supersedes=[joined["id"]])) == ("supersedes_not_allowed", False)
