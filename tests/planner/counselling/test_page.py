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


def visited(*days):
    """The passages of the page for a clinic that sees its patients on these days alone, by their codes."""
    own = [{"name": f"{first}", "first_day": first, "last_day": last} for first, last in days]
    practice = {"schema": 1, "decided_by": "Dr. Mira Example", "reason": "Most live nearby.", "visits": own}
    made = write(plan(choice_of(case(40), "recess-both-mr")))
    page = json.loads(answer(json.dumps({"ask": "counselling", "plan": made, "practice": practice})))["answer"]
    return {each["code"]: each for each in page["days"]}


@pytest.mark.parametrize(
    ("days", "said"),
    [
        ((1, 1), "A visit is usually on day 1 after the operation."),
        ((5, 10), "A visit is usually between day 5 and day 10 after the operation."),
        ((14, 15), "A visit is usually between day 14 and day 15 after the operation."),
        ((42, 56), "A visit is usually about 6 to 8 weeks after the operation."),
        ((150, 210), "A visit is usually about 5 to 7 months after the operation."),
        ((180, 190), "A visit is usually about 26 to 27 weeks after the operation."),
        ((330, 400), "A visit is usually about 11 to 13 months after the operation."),
        ((695, 765), "A visit is usually about 2 years after the operation."),
        ((850, 950), "A visit is usually about 28 to 31 months after the operation."),
    ],
)
def test_a_clinic_s_own_visit_is_told_in_the_unit_that_tells_its_days_apart(days, said):
    (sentence,) = visited(days)["visits"]["sentences"]

    assert sentence["text"].format(**sentence["values"]) == said


def test_where_the_clinic_set_its_own_visits_the_usual_ones_are_not_told():
    own = visited((3, 4))
    usual = {each.code: each for each in counselling(plan(choice_of(case(40), "recess-both-mr"))).days}
    told = " ".join(said["text"] for each in own.values() for said in each["sentences"])

    assert "visits" not in usual
    assert own["visits"]["origin"]["mark"]["text"] == "this clinic's practice"
    assert own["weeks"]["origin"]["mark"]["text"] == "common practice"
    for common in ("first visit is usually", "between day 5 and", "After 6 to 8 weeks", "Further visits are usually"):
        assert common not in told
        assert any(common in said.text for each in usual.values() for said in each.sentences)
