"""The nineteen items: how many in each phase, who is asked, and that every answer is one of alternatives."""

import re
from collections import Counter

import pytest

from planner.checks import ITEMS
from planner.provenance import Mark
from planner.records.check_item import Phase, TeamRole
from planner.values.checks import Effect, Hand, Way

STEPS = [step for item in ITEMS for step in item.steps]


@pytest.mark.check_value
@pytest.mark.parametrize(("phase", "count"), [(Phase.SIGN_IN, 7), (Phase.TIME_OUT, 7), (Phase.SIGN_OUT, 5)])
def test_each_phase_has_as_many_items_as_the_checklist(phase, count):
    """World Health Organization, Surgical Safety Checklist, 2009: 7, 7 and 5 boxes."""
    assert Counter(item.phase for item in ITEMS)[phase] == count


@pytest.mark.check_value
def test_the_limits_of_blood_loss_are_those_of_the_checklist():
    """World Health Organization, Surgical Safety Checklist, 2009: more than 500 ml, 7 ml/kg in children."""
    (blood,) = [step for step in STEPS if step.id == "blood"]

    assert re.findall(r"\d+", blood.aloud) == ["500", "7"]


@pytest.mark.check_value
def test_the_time_of_the_antibiotic_is_that_of_the_checklist():
    """World Health Organization, Surgical Safety Checklist, 2009: within the last 60 minutes."""
    (antibiotic,) = [step for step in STEPS if step.id == "antibiotic"]

    assert "60 minutes" in antibiotic.aloud


def test_every_item_names_its_source_and_every_step_is_told_apart():
    assert all(item.provenance.mark is Mark.PUBLISHED and "2009" in item.provenance.source for item in ITEMS)
    assert len({step.id for step in STEPS}) == len(STEPS)
    assert {step.role for step in STEPS} == set(TeamRole)


def test_every_step_is_entered_or_chosen_among_answers_of_which_one_goes_on_and_one_does_not():
    for step in STEPS:
        if step.way in (Way.ANSWER, Way.ALLERGY):
            effects = [answer.effect for answer in step.answers]
            assert Effect.ON in effects, step.id
            assert len(effects) > effects.count(Effect.ON) or step.way is Way.ALLERGY, step.id
        else:
            assert step.do, step.id
            assert not step.answers, step.id


def test_the_answer_that_goes_on_has_no_place_of_its_own():
    """Or a hand would learn the place and no longer read."""
    first = [step.answers[0].effect for step in STEPS if step.answers]

    assert {Effect.ON, Effect.STOP} <= set(first)


def test_the_operation_is_entered_again_by_the_second_person_in_sign_in_and_in_time_out():
    again = [(item.phase, step.hand) for item in ITEMS for step in item.steps if step.way is Way.CONSENT]

    assert again == [(Phase.SIGN_IN, Hand.SECOND), (Phase.TIME_OUT, Hand.SECOND)]


def test_a_sentence_is_short_enough_to_be_read_aloud():
    assert [step.id for step in STEPS if len(step.aloud) > 110] == []
