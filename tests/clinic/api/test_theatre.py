"""A theatre device gets the signed plans of these days, and nothing that no card needs."""

from datetime import timedelta
from types import SimpleNamespace

import pytest
from django.utils import timezone

from clinic.api.push import views
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


def test_theatre_gets_the_patient_records_of_a_joined_entry_and_nothing_else_of_it(cast):
    """An allergy that was written on the other entry is in theatre before the next operation, not after it."""
    pen = cast.surgeon.pen
    line, other = pen.line(), pen.line(hospital_number="H-2", allergies="Penicillin.")[:3]
    cast.surgeon.accepted(*line, *other)
    _, cursor = cast.theatre_nurse.everything()
    join = pen.join(line[0], other[0])
    cast.surgeon.accepted(join)
    with_the_join, cursor = cast.theatre_nurse.everything(cursor)
    corrected = pen.patient_again(other[0], allergies="Penicillin and latex.")
    cast.surgeon.accepted(corrected)

    assert ids(with_the_join) == ids([other[0], join])
    assert ids(cast.theatre_nurse.everything(cursor)[0]) == ids([corrected])


def test_a_join_that_is_taken_back_takes_the_other_entry_from_theatre(cast):
    pen = cast.surgeon.pen
    line, other = pen.line(), pen.patient(hospital_number="H-2")
    join = pen.join(line[0], other)
    cast.surgeon.accepted(*line, other, join)
    _, cursor = cast.theatre_nurse.everything()
    cast.surgeon.accepted(pen.retraction(join))
    page = cast.theatre_nurse.page(cursor)

    assert (page["records"], sorted(page["removed"])) == ([], sorted(ids([other, join])))
    assert ids(cast.theatre_nurse.everything()[0]) == ids([line[0], *line[2:]])


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


def at(days, after="", *, role=Role.THEATRE, clinic):
    return pull(clinic.pk, role, after=after, limit=50, now=timezone.now() + timedelta(days=days))


def test_what_leaves_these_days_is_named_for_removal_once(cast):
    patient, examination, plan, signature = cast.surgeon.pen.line()
    cast.surgeon.accepted(patient, examination, plan, signature)
    held = at(0, clinic=cast.clinic)
    still = at(13, held.cursor, clinic=cast.clinic)
    gone = at(15, still.cursor, clinic=cast.clinic)
    after = at(16, gone.cursor, clinic=cast.clinic)

    assert (held.removed, still.removed, still.cursor) == ((), (), held.cursor)
    assert set(map(str, gone.removed)) == set(ids([patient, plan, signature]))
    assert (after.removed, after.records, gone.reset) == ((), (), False)


def test_a_lost_answer_names_the_removals_again(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    held = at(0, clinic=cast.clinic)

    assert at(15, held.cursor, clinic=cast.clinic).removed == at(15, held.cursor, clinic=cast.clinic).removed


def test_a_patient_with_a_later_plan_of_these_days_is_not_removed(cast, monkeypatch):
    patient, examination, plan, signature = cast.surgeon.pen.line()
    monkeypatch.setattr(views, "timezone", SimpleNamespace(now=lambda: timezone.now() - timedelta(days=10)))
    cast.surgeon.accepted(patient, examination, plan, signature)
    monkeypatch.undo()
    held = at(0, clinic=cast.clinic)
    later = cast.surgeon.pen.plan(patient, examination, place=1)
    cast.surgeon.accepted(later, cast.surgeon.pen.signature(later))
    page = at(10, held.cursor, clinic=cast.clinic)

    assert page.removed == ()
    assert {later["id"], patient["id"]} <= {str(record.pk) for record in page.records}


def test_only_theatre_is_told_to_remove(cast):
    cast.surgeon.accepted(*cast.surgeon.pen.line())
    held = at(0, role=Role.SURGEON, clinic=cast.clinic)

    assert at(400, held.cursor, role=Role.SURGEON, clinic=cast.clinic).removed == ()
    assert cast.surgeon.page()["removed"] == []
