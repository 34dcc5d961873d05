"""The first version of a patient's record names the patient for good."""

from tests.clinic.pen import uuid7


def test_a_first_version_must_carry_its_own_id_as_patient(cast):
    (result,) = cast.surgeon.results(cast.surgeon.pen.patient() | {"patient": uuid7()})

    assert (result["code"], result["field"], result["retryable"]) == ("patient_id_differs", "patient", False)


def test_a_later_version_must_carry_the_first_ones_id(cast):
    first = cast.surgeon.pen.patient()
    again = cast.surgeon.pen.patient_again(first, full_name="Inês Ferreira")
    cast.surgeon.accepted(first)

    (result,) = cast.surgeon.results(again | {"patient": again["id"]})

    assert result["code"] == "patient_id_differs"
    cast.surgeon.accepted(again)


def test_a_third_version_supersedes_the_second_and_still_carries_the_first_ones_id(cast):
    pen = cast.surgeon.pen
    first = pen.patient()
    second = pen.patient_again(first, full_name="Inês Ferreira")
    third = pen.patient_again(first, supersedes=second, allergies="latex")

    cast.surgeon.accepted(first, second, third)


def test_two_devices_may_change_the_same_patient_and_both_versions_enter(cast):
    first = cast.surgeon.pen.patient()
    cast.surgeon.accepted(first)

    cast.surgeon.accepted(cast.surgeon.pen.patient_again(first, full_name="Inês Ferreira"))
    cast.orthoptist.accepted(cast.orthoptist.pen.patient_again(first, full_name="Ines Ferreira Costa"))


def test_a_patient_cannot_be_named_by_a_later_version(cast):
    """Every record names the first version, so that a patient's records are found by one id."""
    pen = cast.orthoptist.pen
    first = pen.patient()
    second = pen.patient_again(first, full_name="Inês Ferreira")
    cast.orthoptist.accepted(first, second)

    (result,) = cast.orthoptist.results(pen.examination(second | {"patient": second["id"]}))

    assert result["code"] == "patient_differs"
