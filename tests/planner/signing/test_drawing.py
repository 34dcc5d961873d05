"""The drawing must name the plan's muscles and operations, no more and no fewer."""

from dataclasses import replace
from itertools import permutations

from hypothesis import given
from hypothesis import strategies as st

from planner.anatomy import Eye, Muscle
from planner.records.plan import DrawnMuscle
from planner.signing import compare_drawing
from planner.values.option import Operation
from tests.planner.signing.pieces import LEFT_MR, RIGHT_LR, RIGHT_MR, drawing, option

OPTION = option(RIGHT_MR, RIGHT_LR, LEFT_MR)
DRAWN = drawing(*OPTION.doses)

muscles = st.builds(
    DrawnMuscle, eye=st.sampled_from(Eye), muscle=st.sampled_from(Muscle), operation=st.sampled_from(Operation)
)


def test_a_drawing_in_any_order_equals_the_plan():
    for order in permutations(DRAWN):
        comparison = compare_drawing(OPTION, order)

        assert comparison.equal
        assert comparison.missing == comparison.unexpected == ()


def test_a_muscle_left_out_is_missing():
    comparison = compare_drawing(OPTION, DRAWN[1:])

    assert not comparison.equal
    assert comparison.missing == DRAWN[:1]
    assert comparison.unexpected == ()


def test_a_muscle_of_the_other_eye_is_unexpected_and_its_fellow_missing():
    wrong_side = replace(DRAWN[1], eye=Eye.LEFT)
    comparison = compare_drawing(OPTION, (DRAWN[0], wrong_side, DRAWN[2]))

    assert not comparison.equal
    assert comparison.missing == (DRAWN[1],)
    assert comparison.unexpected == (wrong_side,)


def test_the_other_operation_is_another_drawing():
    recessed = replace(DRAWN[1], operation=Operation.RECESS)

    assert compare_drawing(OPTION, (DRAWN[0], recessed, DRAWN[2])).unexpected == (recessed,)


def test_a_muscle_drawn_twice_is_unexpected_once():
    assert compare_drawing(OPTION, (*DRAWN, DRAWN[0])).unexpected == (DRAWN[0],)


@given(st.lists(muscles, unique=True, max_size=12))
def test_equal_means_the_same_set(drawn):
    comparison = compare_drawing(OPTION, tuple(drawn))

    assert comparison.equal is (set(drawn) == set(DRAWN))
    assert set(comparison.missing) == set(DRAWN) - set(drawn)
    assert set(comparison.unexpected) == set(drawn) - set(DRAWN)
