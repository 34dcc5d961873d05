"""What theatre found enters as it was found, and a pass only where it follows from what was entered."""

import pytest

from tests.clinic.checking import check_body, theatre_check
from tests.clinic.pen import uuid7


@pytest.fixture
def line(cast):
    """A signed card that the clinic knows."""
    known = cast.surgeon.pen.line()
    cast.surgeon.accepted(*known)
    return known


def code(person, record):
    (result,) = person.results(record)
    return result["code"], result["retryable"]


def altered(person, line, **body):
    return person.pen.record("theatre_check", line[0]["patient"], check_body(line) | body)


def test_the_three_phases_enter_one_after_the_other_from_the_theatre(cast, line):
    pen = cast.theatre_nurse.pen
    first = theatre_check(pen, line)
    second = theatre_check(pen, line, "time out", after=first["id"])
    third = theatre_check(pen, line, "sign out", after=second["id"])

    cast.theatre_nurse.accepted(first, second, third)
    kinds = [record["kind"] for record in cast.surgeon.everything()[0]]
    assert kinds[-3:] == ["theatre_check"] * 3


@pytest.mark.parametrize(
    ("wrong", "stop"),
    [
        ({"wristband": {"hospital_number": "H-9999"}}, "wristband_differs"),
        ({"wristband": {"born_on": "2019-04-03"}}, "wristband_differs"),
        ({"paper": {"check_word": "BADO LIRE"}}, "check_word_differs"),
        ({"consent": {"consented": [{"eye": "left", "muscle": "LR", "operation": "resect"}]}}, "consent_differs"),
        ({"mark": {"marked": "none"}}, "mark_differs"),
        ({"machine": {"answer": "not_checked"}}, "answer_stops"),
    ],
)
def test_a_stop_enters_with_its_reason_and_never_as_a_pass(cast, line, wrong, stop):
    stopped = theatre_check(cast.theatre_nurse.pen, line, wrong=wrong)
    assert stopped["body"]["stop"]["code"] == stop

    claim = cast.theatre_nurse.pen.record(
        "theatre_check", line[0]["patient"], stopped["body"] | {"outcome": "passed", "stop": None}
    )
    assert code(cast.theatre_nurse, claim) == ("outcome_differs", False)
    cast.theatre_nurse.accepted(stopped)


def test_an_allergy_of_a_newer_record_stops_where_none_was_said_to_be_known(cast, line):
    newer = cast.surgeon.pen.patient_again(line[0], allergies="chlorhexidine")
    cast.surgeon.accepted(newer)
    also = [{"record_id": newer["id"], "patient": newer["body"]}]
    stopped = theatre_check(cast.theatre_nurse.pen, line, also=also, wrong={"allergy": {"answer": "none"}})

    assert stopped["body"]["stop"]["code"] == "allergy_differs"
    assert stopped["body"]["also"] == [newer["id"]]
    forgotten = cast.theatre_nurse.pen.record(
        "theatre_check", line[0]["patient"], stopped["body"] | {"outcome": "passed", "stop": None}
    )
    assert code(cast.theatre_nurse, forgotten) == ("outcome_differs", False)
    cast.theatre_nurse.accepted(stopped)


def test_a_pass_without_its_entries_is_none(cast, line):
    assert code(cast.surgeon, altered(cast.surgeon, line, entries=[])) == ("outcome_differs", False)


def test_two_people_are_needed(cast, line):
    body = check_body(line)

    for second, expected in ((None, "people_missing"), (body["first"], "same_person")):
        assert code(cast.surgeon, altered(cast.surgeon, line, second=second)) == (expected, False)


def test_a_phase_needs_a_pass_of_the_one_before_for_this_card(cast, line):
    pen = cast.theatre_nurse.pen
    stopped = theatre_check(pen, line, wrong={"mark": {"marked": "none"}})
    cast.theatre_nurse.accepted(stopped)

    assert code(cast.theatre_nurse, altered(cast.theatre_nurse, line, phase="time out"))[0] == "step_differs"
    after_stop = theatre_check(pen, line, "time out", after=stopped["id"])
    assert code(cast.theatre_nurse, after_stop) == ("after_differs", False)
    after_unknown = theatre_check(pen, line, "time out", after=uuid7())
    assert code(cast.theatre_nurse, after_unknown) == ("reference_unknown", True)


def test_a_card_is_of_one_patient_and_one_plan(cast, line):
    other = cast.surgeon.pen.line(hospital_number="H-2222")
    cast.surgeon.accepted(*other)

    assert code(cast.surgeon, altered(cast.surgeon, line, plan_id=other[2]["id"])) == ("patient_differs", False)
    again = cast.surgeon.pen.patient_again(line[0], note="Moved house.")
    cast.surgeon.accepted(again)
    assert code(cast.surgeon, altered(cast.surgeon, line, patient_id=again["id"])) == ("card_differs", False)


def test_what_theatre_did_by_a_card_that_had_been_replaced_meanwhile_is_kept(cast, line):
    patient, examination, plan, _ = line
    cast.surgeon.accepted(cast.surgeon.pen.plan(patient, examination, place=1, supersedes=plan))

    cast.theatre_nurse.accepted(theatre_check(cast.theatre_nurse.pen, line))


def test_a_stop_because_of_the_card_enters(cast, line):
    cast.surgeon.accepted(cast.surgeon.pen.stopped_check(line))


def test_a_check_supersedes_nothing_and_is_not_taken_back(cast, line):
    made = theatre_check(cast.surgeon.pen, line)
    cast.surgeon.accepted(made)

    assert code(cast.surgeon, altered(cast.surgeon, line) | {"supersedes": [made["id"]]})[0] == "supersedes_not_allowed"
    assert code(cast.surgeon, cast.surgeon.pen.retraction(made)) == ("record_stays", False)


def test_an_item_of_the_clinics_own_is_asked_as_the_clinic_words_it(cast, line):
    item = cast.surgeon.pen.check_item(phase="sign in")
    other = cast.surgeon.pen.check_item(phase="sign in", aloud="Is the bed locked and low?")
    cast.surgeon.accepted(item, other)
    asked = [{"record_id": item["id"], "item": item["body"]}]

    cast.theatre_nurse.accepted(theatre_check(cast.theatre_nurse.pen, line, local=asked))
    twisted = [{"record_id": item["id"], "item": other["body"]}]
    record = theatre_check(cast.theatre_nurse.pen, line, local=twisted)
    assert code(cast.theatre_nurse, record) == ("local_item_differs", False)
