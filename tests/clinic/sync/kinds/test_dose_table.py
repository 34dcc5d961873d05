"""A clinic's own dose table belongs to the clinic, is checked like any table, and can be replaced and taken back."""

import pytest

from tests.clinic.pen import DOSE_TABLE


def rejected(person, record):
    (result,) = person.results(record)
    return result["code"], result["field"], result["retryable"]


def test_a_table_its_next_version_and_its_retraction_enter(cast):
    pen = cast.surgeon.pen
    first = pen.dose_table()
    second = pen.dose_table_again(first, name="Harbour clinic, revised")

    cast.surgeon.accepted(first, second, pen.retraction(second))


def test_every_role_that_plans_pulls_it_and_theatre_does_not(cast):
    table = cast.surgeon.pen.dose_table()
    cast.surgeon.accepted(table)

    assert [record["id"] for record in cast.orthoptist.everything()[0]] == [table["id"]]
    assert cast.theatre_nurse.everything()[0] == []


def test_a_first_version_must_carry_its_own_id_and_a_later_one_the_firsts(cast):
    pen = cast.surgeon.pen
    first = pen.dose_table()
    cast.surgeon.accepted(first)
    again = pen.dose_table_again(first)

    assert rejected(cast.surgeon, pen.dose_table() | {"patient": first["id"]}) == ("table_id_differs", "patient", False)
    assert rejected(cast.surgeon, again | {"patient": again["id"]}) == ("table_id_differs", "patient", False)


@pytest.mark.parametrize(
    ("body", "code", "field"),
    [
        ({"esotropia": list(reversed(DOSE_TABLE["esotropia"]))}, "not_rising", "body.esotropia.1.deviation_pd"),
        ({"id": "wright-after-parks"}, "id_taken", "body.id"),
        ({"exotropia": DOSE_TABLE["exotropia"][:1]}, "too_short", "body.exotropia"),
    ],
)
def test_what_is_no_table_is_rejected_with_the_row_named(cast, body, code, field):
    assert rejected(cast.surgeon, cast.surgeon.pen.dose_table(**body)) == (code, field, False)


def test_no_patients_record_can_hang_on_a_table(cast):
    pen = cast.surgeon.pen
    table = pen.dose_table()
    cast.surgeon.accepted(table)

    assert rejected(cast.surgeon, pen.examination(table)) == ("reference_kind", "patient", False)


def test_a_table_can_only_be_taken_back_by_who_may_write_one(cast):
    table = cast.surgeon.pen.dose_table()
    cast.surgeon.accepted(table)

    assert rejected(cast.orthoptist, cast.orthoptist.pen.retraction(table))[0] == "role_may_not"
