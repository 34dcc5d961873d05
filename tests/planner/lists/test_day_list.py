"""A day's list: times, warnings with their level, and the kit, whatever this device holds."""

from dataclasses import replace

import pytest

from planner.canonical import digest
from planner.codec import read, write
from planner.lists import Known, Standing, day_list
from planner.lists.times import clock_words, slots
from planner.records.operating_list import OperatingList
from planner.records.practice import Practice
from planner.records.set_up import SetUp
from planner.signing import Attestation, sign
from planner.values.statement import Level
from tests.planner.setup.prepared import BOTH_EYES, CHILD, ONE_EYE, patient, planned

PLAN_ID = "0190a0b0-0000-7000-8000-000000000003"
ANA, OLA = "0190a0b0-0000-7000-8000-00000000000a", "0190a0b0-0000-7000-8000-00000000000b"


def listed(*patients, **rest):
    entries = [{"patient_id": each, "plan_id": PLAN_ID, "duration_min": 45} for each in patients]
    return read(OperatingList, {"schema": 1, "on": "2026-12-01", "team": "Harbour", "entries": entries} | rest)


def known(option=ONE_EYE, *, signed=True, standing=Standing.CURRENT, set_up=None, **who):
    person = patient(**who)
    plan = planned(option, person)
    made = Known(
        patient=person,
        plan=plan,
        signature=None,
        set_up=set_up,
        standing=standing,
        patient_digest=plan.patient_digest,
        plan_digest=digest(write(plan)),
    )
    return signature_under(made) if signed else made


def signature_under(made):
    option = made.plan.option
    drawn = [{name: write(dose)[name] for name in ("eye", "muscle", "operation")} for dose in option.doses]
    body = {
        "plan_id": PLAN_ID,
        "plan_digest": made.plan_digest,
        "drawn": drawn,
        "acknowledged": [each.code for each in option.notices if each.level is Level.CAUTION],
        "signer_name": "Dr Fern",
        "signed_at": "2026-11-25T09:30:00+01:00",
    }
    return replace(made, signature=sign(made.plan, read(Attestation, body)))


def said(row):
    return {notice.code: notice.level for notice in row.notices}


def test_operations_follow_each_other_with_the_turnover_between():
    made = day_list(listed(ANA, OLA, starts_at="07:50"), [known(), known(full_name="Ola Other")], None)

    assert [(row.starts_at, row.ends_at) for row in made.rows] == [("07:50", "08:35"), ("08:50", "09:35")]
    assert (made.ends_at, made.total_min) == ("09:35", 105)


def test_the_turnover_is_the_clinics():
    body = {"schema": 1, "decided_by": "Dr Fern", "reason": "Two tables are used.", "figures": []}
    own = read(Practice, body | {"figures": [{"name": "turnover_min", "value": 0}]})

    assert day_list(listed(ANA, OLA), [None, None], own).rows[1].starts_at == "08:45"


def test_a_day_may_run_past_midnight():
    assert [clock_words(each.end_min) for each in slots("23:30", [20, 30], 10)] == ["23:50", "00:30 next day"]


def test_a_row_says_who_which_eye_and_what_and_the_check_word():
    (row,) = day_list(listed(ANA), [known(BOTH_EYES)], None).rows

    assert (row.full_name, row.hospital_number, row.eyes_words) == ("Ana Example", "PP-0007", "BOTH EYES")
    assert [words.partition(" recess")[0] for words in row.operation] == [
        "RIGHT EYE medial rectus",
        "LEFT EYE medial rectus",
    ]
    assert len(row.check_word) == 9


@pytest.mark.parametrize(
    ("held", "code"),
    [
        (None, "plan_not_here"),
        (known(signed=False), "plan_not_signed"),
        (known(standing=Standing.REPLACED), "plan_replaced"),
        (known(standing=Standing.TAKEN_BACK), "plan_taken_back"),
        (replace(known(), patient_digest="0" * 64), "other_patient"),
    ],
)
def test_a_plan_that_nobody_may_operate_by_stops_its_row_and_stays_on_the_list(held, code):
    made = day_list(listed(ANA, OLA), [held, known(full_name="Ola Other")], None)

    assert said(made.rows[0])[code] is Level.STOP
    assert Level.STOP not in said(made.rows[1]).values()


def test_a_set_up_that_a_stop_forbids_stops_its_row():
    cutting = {"item": "needle", "choice": "cutting", "reason": "The others are used up."}
    body = {"schema": 1, "plan_id": PLAN_ID, "plan_digest": "0" * 64, "on": "2026-12-01", "overrides": [cutting]}
    (row,) = day_list(listed(ANA), [known(set_up=read(SetUp, body))], None).rows

    assert said(row) == {"never_cutting": Level.STOP}


def test_a_patient_twice_is_warned_of_in_both_rows():
    made = day_list(listed(ANA, ANA), [known(), known()], None)

    assert [said(row).get("patient_twice") for row in made.rows] == [Level.CAUTION, Level.CAUTION]
    assert "name_alike" not in said(made.rows[0])


def test_two_patients_of_one_last_name_are_warned_of():
    made = day_list(listed(ANA, OLA), [known(), known(full_name="Ola EXAMPLE")], None)

    assert all(said(row)["name_alike"] is Level.CAUTION for row in made.rows)


def test_a_child_late_in_the_day_is_noted_as_common_practice():
    held = [known(born_on=CHILD), known(full_name="Ola Other")]
    early, late = (day_list(listed(ANA, OLA, starts_at=clock), held, None) for clock in ("11:59", "12:00"))

    assert "child_late" not in said(early.rows[0])
    assert said(late.rows[0])["child_late"] is Level.NOTE
    assert "child_late" not in said(late.rows[1])


@pytest.mark.parametrize(
    ("who", "told"),
    [
        ({"malignant_hyperthermia_family": "yes"}, ["hyperthermia_in_the_family"]),
        ({"malignant_hyperthermia_family": "no", "latex": "no"}, []),
        ({"latex": "yes"}, ["latex"]),
        ({}, []),
    ],
)
def test_a_row_warns_of_what_the_card_says_before_the_list_is_made(who, told):
    """The anaesthetist must know of malignant hyperthermia before; latex-free things are laid out."""
    signed, now, other = known(**who), patient(**who), (patient(**who, hospital_number="OI-0777"),)
    for held in (signed, replace(known(), patient_now=now), replace(known(), other_entries=other)):
        (row,) = day_list(listed(ANA), [held], None).rows
        of_person = {"hyperthermia_in_the_family", "latex", "latex_not_first"} & said(row).keys()

        assert sorted(of_person) == told
        assert all(said(row)[code] is Level.CAUTION for code in told)


def test_whoever_does_not_bear_latex_comes_before_whoever_bears_it():
    free = [known(latex="yes", full_name=name) for name in ("Ana Example", "Ola Other")]
    bears, unheld = known(full_name="Per Third"), None
    last = PLAN_ID.replace("3", "c")

    def codes_of(*held):
        rows = day_list(listed(*(ANA, OLA, last)[: len(held)]), held, None).rows
        return [sorted(code for code in said(row) if code.startswith("latex")) for row in rows]

    assert codes_of(*free, bears) == [["latex"], ["latex"], []]
    assert codes_of(free[0], bears, free[1]) == [["latex"], [], ["latex_not_first"]]
    assert codes_of(bears, free[0]) == [[], ["latex_not_first"]]
    assert codes_of(unheld, free[0]) == [[], ["latex_not_first"]]


def test_what_another_entry_says_of_latex_is_packed_for():
    held = [replace(known(), other_entries=(patient(latex="yes", hospital_number="OI-0777"),)), known()]
    made = day_list(listed(ANA, OLA), held, None)

    assert {line.article: line.used for line in made.kit}["latex_free"] == 1


def test_a_set_up_of_another_day_is_warned_of():
    body = {"schema": 1, "plan_id": PLAN_ID, "plan_digest": "0" * 64, "on": "2026-12-02"}
    (row,) = day_list(listed(ANA), [known(set_up=read(SetUp, body))], None).rows

    assert said(row)["set_up_of_another_day"] is Level.CAUTION


def test_the_kit_counts_what_is_held():
    made = day_list(listed(ANA, OLA), [known(), None], None)

    assert {line.article: line.used for line in made.kit}["instrument_set"] == 1
    assert [len(each.needs) > 0 for each in made.needs] == [True, False]


@pytest.mark.parametrize(
    ("held", "number"),
    [
        ([known(), None], 2),
        ([replace(known(), patient_digest="0" * 64), known()], 1),
        ([known(), known(signed=False)], None),
    ],
)
def test_the_kit_says_which_operations_it_does_not_count(held, number):
    """A plan that is not on the device, or a row that is stopped before a sheet could be made."""
    told = day_list(listed(ANA, OLA), held, None).kit_notices

    assert [notice.level for notice in told] == [Level.CAUTION] * (number is not None)
    assert all(f"operation {number} is not counted" in notice.text for notice in told)


def test_an_empty_list_is_a_list():
    made = day_list(listed(), [], None)

    assert (made.rows, made.kit, made.total_min, made.ends_at) == ((), (), 0, "08:00")


def test_a_row_tells_the_allergies_that_are_newer_or_stand_under_another_entry():
    """Who prepares the room by the list must not read the signed record alone."""
    made = replace(
        known(allergies="iodine"),
        patient_now=patient(allergies="iodine", latex="yes"),
        other_entries=(patient(allergies="penicillin", hospital_number="OI-0777"),),
    )
    (row,) = day_list(listed(ANA), [made], None).rows

    assert row.allergies == "iodine; entered under number OI-0777: penicillin; latex"
