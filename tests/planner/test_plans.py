"""A choice becomes a plan, and only the engine's own word can be signed."""

from dataclasses import replace

import pytest

from planner.errors import Refused
from planner.plans import Choice, check, plan
from tests.planner.patients import case, change
from tests.planner.tables.own_table import own

ID = "0190a0b0-0000-7000-8000-00000000000{}"


def choice_of(chosen_case, option):
    return Choice(
        case=chosen_case,
        option=option,
        patient_id=ID.format(1),
        patient_digest="1" * 64,
        examination_id=ID.format(2),
        examination_digest="2" * 64,
    )


def code_of(work):
    with pytest.raises(Refused) as caught:
        work()
    return caught.value.faults[0].code


def test_a_plan_keeps_the_whole_option_with_table_and_engine():
    made = plan(choice_of(case(40, changes=[change("recess-both-mr", "left", "MR", 5.0)]), "recess-both-mr"))

    assert made.option.doses[1].changed
    assert made.table.id == "wright-after-parks"
    assert made.engine_version == "2.0.0"


def test_a_plan_names_the_series_that_dosed_it_and_no_other_source():
    made = plan(choice_of(case(25), "recess-mr-graded-left"))
    by_the_table = plan(choice_of(case(25), "recess-both-mr"))

    assert (made.table.id, made.table) == ("recess-mr-graded", made.option.table)
    assert code_of(lambda: check(replace(made, table=by_the_table.table))) == "other_doses"


def test_a_plan_by_a_clinics_own_table_carries_the_table_and_passes():
    made = plan(choice_of(case(25, table="harbour-clinic", clinic_table=own()), "recess-both-mr"))

    check(made)
    assert made.table.clinics_own
    assert made.case.clinic_table == own()


def test_a_plan_whose_own_table_was_altered_does_not_pass():
    made = plan(choice_of(case(25, table="harbour-clinic", clinic_table=own()), "recess-both-mr"))
    rows = tuple(replace(row, both_recess_mm=row.both_recess_mm + 0.5) for row in own().esotropia)
    false = replace(made, case=replace(made.case, clinic_table=replace(own(), esotropia=rows)))

    assert code_of(lambda: check(false)) == "other_doses"


def test_an_option_with_a_stop_is_not_planned():
    blind = case(40, acuity_right="6/6", acuity_left="no light perception")

    assert code_of(lambda: plan(choice_of(blind, "recess-both-mr"))) == "plan_has_stop"
    assert code_of(lambda: plan(choice_of(case(90), "recess-both-mr"))) == "plan_has_stop"


def test_an_option_that_is_not_offered_is_not_planned():
    assert code_of(lambda: plan(choice_of(case(40), "recess-both-lr"))) == "unknown_option"


@pytest.mark.parametrize("field", ["mm", "eye"])
def test_a_plan_that_was_altered_does_not_pass(field):
    made = plan(choice_of(case(40), "recess-mr-resect-lr-left"))
    first, second = made.option.doses
    altered = {"mm": first.mm + 1} if field == "mm" else {"eye": first.eye.other}
    false = replace(made, option=replace(made.option, doses=(replace(first, **altered), second)))

    assert code_of(lambda: check(false)) == "other_doses"


def test_a_plan_whose_caution_was_taken_out_does_not_pass():
    made = plan(choice_of(case(60), "recess-both-mr"))
    false = replace(made, option=replace(made.option, notices=()))

    assert code_of(lambda: check(false)) == "other_doses"


def test_a_plan_of_another_engine_is_planned_again():
    made = plan(choice_of(case(40), "recess-both-mr"))

    assert code_of(lambda: check(replace(made, engine_version="0.9.0"))) == "other_engine"
