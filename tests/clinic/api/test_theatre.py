"""A theatre device gets the signed plans of these days, and nothing that no card needs."""

from datetime import timedelta

import pytest
from django.utils import timezone

from clinic.people.role import Role
from clinic.sync.pull import pull
from tests.clinic.pen import uuid7


def ids(records):
    return [record["id"] for record in records]


def pulled(person):
    return person.everything()[0]


def test_theatre_gets_patient_plan_and_signature_and_never_the_examination(cast):
    patient, examination, plan, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, examination, plan, signature)

    assert ids(pulled(cast.theatre_nurse)) == ids([patient, plan, signature])
    assert ids(pulled(cast.surgeon)) == ids([patient, examination, plan, signature])


def test_a_patient_whose_plan_is_not_signed_is_not_told(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line()[:3])

    assert pulled(cast.theatre_nurse) == []


def test_records_that_are_older_than_their_signature_come_with_it_to_a_device_that_was_ahead(cast):
    """The patient's record stands before the cursor when the plan is signed; it must come all the same."""
    patient, examination, plan, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, examination, plan)
    received, cursor = cast.theatre_nurse.everything()
    cast.surgeon.accepted(signature)
    after, _ = cast.theatre_nurse.everything(cursor)

    assert received == []
    assert ids(after) == ids([patient, plan, signature])


def test_a_plan_that_replaces_a_signed_one_reaches_theatre_before_it_is_signed(cast):
    patient, examination, plan, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, examination, plan, signature)
    _, cursor = cast.theatre_nurse.everything()
    replaced = cast.surgeon.pen.plan(patient, examination, place=1, supersedes=plan)
    taken_back = cast.surgeon.pen.retraction(signature)
    cast.surgeon.accepted(replaced, taken_back)

    assert ids(cast.theatre_nurse.everything(cursor)[0]) == ids([replaced, taken_back])


def test_the_retraction_of_an_examination_is_not_theatres(cast):
    patient, examination, plan, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, examination, plan, signature)
    _, cursor = cast.theatre_nurse.everything()
    cast.surgeon.accepted(cast.surgeon.pen.retraction(examination))

    assert cast.theatre_nurse.everything(cursor)[0] == []


@pytest.mark.parametrize("limit", [1, 2, 3, 50])
def test_pages_of_any_size_give_theatre_every_record_once(cast, limit):
    lines = [cast.surgeon.pen.line(hospital_number=f"H-{number}") for number in range(3)]
    for place in range(4):
        cast.surgeon.accepted(*(line[place] for line in lines))

    records, _ = cast.theatre_nurse.everything(limit=limit)

    assert sorted(ids(records)) == sorted(record["id"] for line in lines for record in line if record is not line[1])


@pytest.mark.parametrize(("days", "count"), [(13, 3), (15, 0)])
def test_a_patient_is_told_for_as_many_days_as_the_setting_says(cast, settings, days, count):
    settings.THEATRE_DAYS = 14
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    later = timezone.now() + timedelta(days=days)

    page = pull(cast.clinic.pk, Role.THEATRE, after="", limit=50, now=later)

    assert len(page.records) == count


def test_the_card_of_a_patient_out_of_these_days_is_not_theatres(cast, settings):
    *earlier, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(*earlier, signature)
    address = f"/api/v1/clinics/{cast.clinic.pk}/cards/{signature['id']}.pdf"

    assert cast.theatre_nurse.client.get(address).status_code == 200
    settings.THEATRE_DAYS = 0
    assert cast.theatre_nurse.client.get(address).status_code == 404
    assert cast.surgeon.client.get(address).status_code == 200


def test_another_window_resets_the_cursor_since_places_are_others(cast, settings):
    _, cursor = cast.theatre_nurse.everything()
    settings.THEATRE_DAYS = 30

    assert cast.theatre_nurse.page(cursor)["reset"] is True


def test_theatre_writes_nothing_of_these_kinds(cast):
    pen = cast.theatre_nurse.pen
    bodies = [pen.patient(), pen.record("examination", uuid7(), {}), pen.record("plan", uuid7(), {})]

    assert {result["code"] for result in cast.theatre_nurse.results(*bodies)} == {"role_may_not"}
