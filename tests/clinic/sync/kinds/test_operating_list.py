"""A day's list is the clinic's; it is put in another order by a later version, and two such versions both stay."""

import pytest

from clinic.ledger.heads import only_heads
from clinic.ledger.models import Record
from tests.clinic.pen import uuid7


def rejected(person, record):
    (result,) = person.results(record)
    return result["code"], result["field"], result["retryable"]


@pytest.fixture
def plans(cast):
    """Two signed plans of two patients."""
    one = cast.surgeon.pen.line()
    other = cast.surgeon.pen.line(full_name="Oskar Pell", hospital_number="H-77")
    cast.surgeon.accepted(*one, *other)
    return one[2], other[2]


def test_the_coordinator_writes_it_and_every_device_has_it_theatre_too(cast, plans):
    listed = cast.coordinator.pen.operating_list(*plans)
    cast.coordinator.accepted(listed)

    for person in (cast.surgeon, cast.orthoptist, cast.theatre_nurse):
        assert listed["id"] in {record["id"] for record in person.everything()[0]}


def test_another_order_is_a_later_version(cast, plans):
    pen = cast.coordinator.pen
    first = pen.operating_list(*plans)
    turned = pen.again(first, entries=first["body"]["entries"][::-1])

    cast.coordinator.accepted(first, turned)


def test_two_orders_made_apart_both_stay_until_a_third_settles_them(cast, plans):
    pen = cast.coordinator.pen
    first = pen.operating_list(*plans)
    turned = pen.again(first, entries=first["body"]["entries"][::-1])
    longer = cast.surgeon.pen.again(first, starts_at="07:30")
    cast.coordinator.accepted(first, turned)
    cast.surgeon.accepted(longer)

    assert _heads() == {turned["id"], longer["id"]}
    settled = cast.surgeon.pen.again(longer) | {"supersedes": [turned["id"], longer["id"]]}
    cast.surgeon.accepted(settled)
    assert _heads() == {settled["id"]}


def test_a_patient_twice_and_an_unsigned_plan_enter_for_the_list_itself_warns_of_them(cast):
    pen = cast.surgeon.pen
    who = pen.patient()
    measured = pen.examination(who)
    plan = pen.plan(who, measured)

    cast.surgeon.accepted(who, measured, plan, pen.operating_list(plan, plan))


def test_a_plan_must_be_known_and_be_that_patients(cast, plans):
    pen = cast.coordinator.pen
    one, other = plans
    entry = {"patient_id": one["patient"], "plan_id": other["id"], "duration_min": 45}
    unknown = entry | {"plan_id": uuid7()}

    crossed = rejected(cast.coordinator, pen.operating_list(entries=[entry]))

    assert crossed == ("patient_differs", "body.entries.0.plan_id", False)
    assert rejected(cast.coordinator, pen.operating_list(entries=[unknown]))[0] == "reference_unknown"


def test_a_first_version_must_carry_its_own_id(cast, plans):
    pen = cast.coordinator.pen
    first = pen.operating_list(*plans)
    cast.coordinator.accepted(first)

    other = pen.operating_list(*plans) | {"patient": first["id"]}

    assert rejected(cast.coordinator, other) == ("list_id_differs", "patient", False)


@pytest.mark.parametrize("who", ["orthoptist", "theatre_nurse"])
def test_coordinator_and_surgeon_alone_write_it(cast, plans, who):
    person = getattr(cast, who)

    assert rejected(person, person.pen.operating_list(*plans))[0] == "role_may_not"


def _heads():
    lists = Record.objects.filter(kind="operating_list")
    return {str(pk) for pk in only_heads(lists).values_list("pk", flat=True)}
