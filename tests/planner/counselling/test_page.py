"""The page says of a plan what the plan says, of the right side, and the mirrored plan has the mirrored page."""

import json
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from planner.anatomy import Eye
from planner.codec import read, write
from planner.counselling import counselling
from planner.counselling.picture import WORDS
from planner.desk import answer
from planner.errors import Refused
from planner.pictures.frame import WIDTH_MM
from planner.plans import plan
from planner.proposal import propose
from planner.records.case import Case
from planner.values.picture import Label
from planner.values.statement import Level
from tests.planner.mirror import mirrored
from tests.planner.patients import case
from tests.planner.strategies import cases
from tests.planner.test_plans import choice_of


@st.composite
def plans(draw):
    """A plan of an option that can be signed."""
    a_case = draw(cases())
    options = [each for each in propose(a_case).all_options if each.doses and not is_stopped(each)]
    assume(options)
    return plan(choice_of(a_case, draw(st.sampled_from(options)).id))


def is_stopped(option):
    return any(notice.level is Level.STOP for notice in option.notices)


def in_one_order(page):
    """Without the picture and the numbers in it; muscles sorted, for the right eye stands first on every page."""
    muscles = [{name: value for name, value in each.items() if name != "number"} for each in page["muscles"]]
    rest = {name: value for name, value in page.items() if name not in {"picture", "muscles"}}
    return rest | {"muscles": sorted(muscles, key=json.dumps)}


@settings(max_examples=20, deadline=None)
@given(plans())
def test_the_mirrored_plan_has_the_mirrored_page(made):
    there = plan(choice_of(read(Case, mirrored(write(made.case))), mirrored(made.option.id)))

    page = in_one_order(mirrored(write(counselling(made))))
    assert page == in_one_order(write(counselling(there)))


@settings(max_examples=20, deadline=None)
@given(plans())
def test_every_muscle_of_the_plan_stands_on_the_page_with_its_side_its_millimetres_and_its_number(made):
    page = counselling(made)
    labels = [mark for mark in page.picture.marks if isinstance(mark, Label)]
    numbers = {label.words: label for label in labels if label.words not in WORDS}

    assert len(page.muscles) == len(made.option.doses)
    assert set(numbers) == {f"{each.number}" for each in page.muscles}
    for each in page.muscles:
        figures = [value for said in each.done for value in said.values.values()]
        assert each.eye_words.text == f"{each.eye.upper()} eye"
        assert each.trade.startswith(each.eye_words.text)
        assert all(figure in each.trade for figure in figures)
        assert (numbers[f"{each.number}"].x < WIDTH_MM / 2) is (each.eye is Eye.RIGHT)


def test_the_desk_answers_a_plan_and_refuses_an_altered_one():
    made = plan(choice_of(case(40), "recess-both-mr"))
    false = replace(made, option=replace(made.option, title="Something else"))

    page = json.loads(answer(json.dumps({"ask": "counselling", "plan": write(made)})))["answer"]
    assert page["muscles"][0]["trade"] == "RIGHT eye, medial rectus: recess 5.5 mm"
    assert page["table"]["id"] == "wright-after-parks"
    with pytest.raises(Refused) as caught:
        counselling(false)
    assert caught.value.faults[0].code == "other_doses"


def test_the_page_defers_to_the_surgeon_and_the_clinic():
    page = counselling(plan(choice_of(case(-30), "recess-both-lr")))

    assert any("surgeon" in said.text for said in page.deferring)
    assert page.call.sentences
    assert "turned the other way" in page.expected[1].array.groups[2].words.text
