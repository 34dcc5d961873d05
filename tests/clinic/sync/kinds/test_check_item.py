"""The clinic's own items reach theatre whoever is operated on, and are changed and ended like a table."""

from tests.clinic.pen import uuid7


def code(person, record):
    (result,) = person.results(record)
    return result["code"]


def test_an_item_and_its_end_reach_the_theatre_without_any_patient(cast):
    pen = cast.surgeon.pen
    first = pen.check_item()
    cast.surgeon.accepted(first)
    again = pen.record("check_item", first["id"], first["body"] | {"title": "The bed"}, supersedes=[first["id"]])
    ended = pen.retraction(first, "Asked twice.") | {"patient": first["id"]}
    _, cursor = cast.theatre_nurse.everything()
    cast.surgeon.accepted(again, ended)

    assert [record["id"] for record in cast.theatre_nurse.everything()[0]] == [first["id"], again["id"], ended["id"]]
    assert [record["id"] for record in cast.theatre_nurse.everything(cursor)[0]] == [again["id"], ended["id"]]
    assert cast.theatre_nurse.page(cursor)["removed"] == []


def test_a_first_version_names_itself_and_a_later_one_the_first(cast):
    astray = cast.surgeon.pen.check_item() | {"patient": uuid7()}

    assert code(cast.surgeon, astray) == "item_id_differs"


def test_the_end_of_a_table_is_not_theatres(cast):
    table = cast.surgeon.pen.dose_table()
    cast.surgeon.accepted(table, cast.surgeon.pen.retraction(table))

    assert cast.theatre_nurse.everything()[0] == []
