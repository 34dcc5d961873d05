"""Where own results are shown beside the table is each surgeon's own choice."""

import pytest

from tests.clinic.cast import Person, sign_in
from tests.clinic.factories import DeviceFactory, MembershipFactory, UserFactory


def assistant(cast):
    """A second surgeon of the clinic."""
    user = UserFactory(full_name="Dr Edda Roan")
    MembershipFactory(user=user, clinic=cast.clinic)
    device = str(DeviceFactory(user=user).device_id)
    return Person(cast.clinic, sign_in(user, device), device, user)


def rejected(person, record):
    (result,) = person.results(record)
    return result["code"], result["field"], result["retryable"]


def test_a_choice_and_its_next_version_enter_and_theatre_has_none_of_it(cast):
    pen = cast.surgeon.pen
    first = pen.own_results()
    cast.surgeon.accepted(first, pen.again(first, switched_on=[]))

    assert cast.theatre_nurse.everything()[0] == []


def test_a_first_version_must_carry_its_own_id(cast):
    first, other = cast.surgeon.pen.own_results(), cast.surgeon.pen.own_results()
    cast.surgeon.accepted(first)

    assert rejected(cast.surgeon, other | {"patient": first["id"]}) == ("own_results_id_differs", "patient", False)


def test_nobody_switches_in_another_name(cast):
    record = cast.surgeon.pen.own_results(surgeon_name="Dr Somebody Else")

    assert rejected(cast.surgeon, record) == ("surgeon_differs", "body.surgeon_name", False)


@pytest.mark.parametrize("who", ["orthoptist", "theatre_nurse", "coordinator"])
def test_a_surgeon_alone_decides_it(cast, who):
    person = getattr(cast, who)

    assert rejected(person, person.pen.own_results())[0] == "role_may_not"


def test_nobody_replaces_another_surgeons_choice(cast):
    first = cast.surgeon.pen.own_results()
    cast.surgeon.accepted(first)
    colleague = assistant(cast)

    assert rejected(colleague, colleague.pen.again(first, surgeon_name="Dr Edda Roan")) == (
        "other_surgeon",
        "supersedes",
        False,
    )
