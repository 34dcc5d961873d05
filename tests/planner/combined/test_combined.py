"""Options done at one sitting: one list of muscles, every rule judged on the whole."""

from dataclasses import replace

import pytest

from planner.errors import Refused
from planner.plans import check, plan
from planner.proposal import propose
from tests.planner.additions.pieces import graded, levels, restricted, work
from tests.planner.patients import before, case, change, reading
from tests.planner.test_plans import choice_of

NONE_OVERACT = tuple(graded(eye, muscle, 0) for eye in ("right", "left") for muscle in ("IO", "SO"))
V_EXO = (reading(-40, gaze="up"), reading(-20, gaze="down"))


def combined(*ids, horizontal_pd=40, readings=(), **rest):
    return propose(replace(case(horizontal_pd, *readings, **rest), combine=ids)).combined


@pytest.mark.parametrize("ids", [(), ("recess-both-mr",)])
def test_fewer_than_two_options_are_no_combination(ids):
    assert combined(*ids) is None


def test_the_id_does_not_depend_on_the_order_of_naming():
    one = combined("recess-sr-right", "recess-both-mr", vertical_pd=12)
    other = combined("recess-both-mr", "recess-sr-right", vertical_pd=12)

    assert one == other
    assert one.id == "recess-both-mr+recess-sr-right"


def test_the_muscles_of_all_parts_the_right_eye_first():
    option = combined("recess-both-mr", "recess-ir-left", vertical_pd=12)

    assert [(dose.eye.value, dose.muscle.value) for dose in option.doses] == [
        ("right", "MR"),
        ("left", "MR"),
        ("left", "IR"),
    ]


def test_what_one_part_leaves_and_another_answers_is_not_said():
    option = combined("recess-both-mr", "recess-ir-left", vertical_pd=12)

    assert {"vertical_not_answered", "horizontal_not_answered"}.isdisjoint(levels(option))
    assert option.expected_residual_pd == 0
    assert option.expected[0].residual == 0


def test_three_recti_of_one_eye_are_cautioned_though_no_part_has_three():
    """Strabismus 2018: ischaemia in 2 of 87 eyes after three recti."""
    option = combined("recess-mr-resect-lr-right", "recess-sr-right", vertical_pd=12)

    assert levels(option)["three_recti-right"] == "caution"


def test_four_recti_of_one_eye_are_a_stop_though_no_part_has_more_than_two():
    option = combined("recess-mr-resect-lr-right", "recess-sr-right-resect-ir-right", vertical_pd=20)

    assert levels(option)["four_recti-right"] == "stop"


def test_recti_operated_earlier_count_with_those_of_all_parts():
    earlier = (before("right", "LR", "recess", 5.0),)
    alone = combined("recess-both-mr", "tuck-so-right", vertical_pd=12, versions=(graded("right", "SO", -1),))
    option = combined("recess-both-mr", "recess-sr-right", vertical_pd=12, previous_operations=earlier)

    assert "recti_with_earlier-right" not in levels(alone)
    assert levels(option)["recti_with_earlier-right"] == "caution"


def test_a_tight_muscle_that_another_part_releases_is_released():
    tight = {"forced_ductions": (restricted("left", "SR"),), "vertical_pd": 12}
    alone = {option.id: option for option in propose(case(40, **tight)).additions}
    released = combined("recess-ir-left", "resect-sr-left", **tight)

    assert levels(alone["resect-sr-left"])["not_released-left-ir"] == "stop"
    assert "not_released-left-ir" not in levels(released)


def test_an_offset_goes_onto_the_recession_of_its_muscle():
    option = combined("recess-both-lr", "offset-both-lr", horizontal_pd=-30, readings=V_EXO, versions=NONE_OVERACT)

    assert work(option) == {("right", "LR", "recess"): 7, ("left", "LR", "recess"): 7}
    assert {dose.offset.direction.value for dose in option.doses} == {"up"}
    assert {dose.limbus_mm for dose in option.doses} == {13.9}
    assert "offset_alone" not in levels(option)
    assert "pattern_not_answered" not in levels(option)


@pytest.mark.parametrize(
    ("horizontal", "deviation", "offset", "expected"),
    [
        # recession and resection go the same way; V: medial down, lateral up; A: the other way round
        ("recess-both-mr", 30, "offset-both-mr", {("MR", "recess"): ("down", "up")}),
        ("resect-both-lr", 30, "offset-both-lr", {("LR", "resect"): ("up", "down")}),
        ("recess-both-lr", -30, "offset-both-lr", {("LR", "recess"): ("up", "down")}),
        ("resect-both-mr", -30, "offset-both-mr", {("MR", "resect"): ("down", "up")}),
        *(
            (
                f"recess-mr-resect-lr-{eye}",
                30,
                f"offset-mr-lr-{eye}",
                {("MR", "recess"): ("down", "up"), ("LR", "resect"): ("up", "down")},
            )
            for eye in ("right", "left")
        ),
        *(
            (
                f"recess-lr-resect-mr-{eye}",
                -30,
                f"offset-mr-lr-{eye}",
                {("LR", "recess"): ("up", "down"), ("MR", "resect"): ("down", "up")},
            )
            for eye in ("right", "left")
        ),
    ],
)
@pytest.mark.parametrize(("letter", "change_pd"), [("V", 20), ("A", -20)])
def test_the_direction_of_every_recession_and_resection(letter, change_pd, horizontal, deviation, offset, expected):  # noqa: PLR0913, PLR0917
    readings = (reading(deviation - change_pd / 2, gaze="up"), reading(deviation + change_pd / 2, gaze="down"))
    option = combined(horizontal, offset, horizontal_pd=deviation, readings=readings, versions=NONE_OVERACT)
    found = {(dose.muscle.value, dose.operation.value): dose.offset.direction.value for dose in option.doses}

    assert found == {key: ways[letter == "A"] for key, ways in expected.items()}


def test_tendons_moved_without_their_recession_are_still_cautioned():
    option = combined("recess-both-lr", "offset-both-mr", horizontal_pd=-30, readings=V_EXO, versions=NONE_OVERACT)

    assert levels(option)["offset_alone"] == "caution"
    assert len(option.doses) == 4


def test_a_muscle_that_two_parts_operate_is_a_stop():
    option = combined("recess-sr-right", "dvd-recess-sr-right", vertical_pd=12, dvd_right_pd=10.0)

    assert levels(option)["muscle_twice-right-sr"] == "stop"


def test_parts_for_one_deviation_add_up_and_are_cautioned():
    option = combined("recess-sr-right", "recess-ir-left", vertical_pd=12)

    assert levels(option)["several_parts-vertical"] == "caution"
    assert (option.expected[0].correction, option.expected[0].residual) == (24, -12)
    assert "overdoes" in option.expected[0].statement.text


def test_a_sum_with_an_unknown_part_is_unknown():
    option = combined("recess-ir-left", "tuck-so-right", vertical_pd=12, versions=(graded("right", "SO", -1),))

    assert option.expected[0].correction is None


def test_a_stop_of_a_part_stops_the_whole():
    option = combined("recess-both-mr", "recess-ir-left", vertical_pd=24)

    assert levels(option)["beyond_widest_maximum-left-ir"] == "stop"


def test_changes_of_the_parts_are_changes_of_the_whole():
    changes = (change("recess-ir-left", "left", "IR", 3.0), change("recess-both-mr", "left", "MR", 5.0))
    option = combined("recess-both-mr", "recess-ir-left", vertical_pd=12, changes=changes)

    assert work(option)[("left", "IR", "recess")] == 3.0
    assert work(option)[("left", "MR", "recess")] == 5.0


@pytest.mark.parametrize(
    ("ids", "code", "field"),
    [
        (("recess-both-mr", "recess-both-ir"), "unknown_option", "combine.1"),
        (("recess-both-mr", "recess-both-mr"), "repeated", "combine.1"),
        (("recess-both-mr", "resect-both-lr"), "two_horizontal_options", "combine.1"),
    ],
)
def test_what_does_not_go_together_is_refused(ids, code, field):
    with pytest.raises(Refused) as caught:
        combined(*ids)

    assert (caught.value.faults[0].code, caught.value.faults[0].field) == (code, field)


@pytest.mark.parametrize("id_", ["recess-both-mr+recess-ir-left", "recess-ir-left"])
def test_a_plan_can_be_made_of_a_combination_and_of_an_addition(id_):
    a_case = replace(case(40, vertical_pd=12), combine=("recess-ir-left", "recess-both-mr"))
    made = plan(choice_of(a_case, id_))

    assert made.option.id == id_
    check(made)
