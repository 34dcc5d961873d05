"""A visit before it is saved: what keeps it from that, and what must not wait."""

import json

from planner.desk import answer
from tests.planner.examined import straight
from tests.planner.followup.aftercare import cared, on, visit
from tests.planner.operation.theatre import signed

BOTH = signed("recess-both-mr", straight(40), straight(44, at="near"))


def reviewed(this, *others):
    request = {"ask": "review_follow_up", "care": cared(BOTH, *others), "visit": this}
    return json.loads(answer(json.dumps(request)))["answer"]


def codes(review, part):
    return [each["code"] for each in review[part]]


def test_a_warning_of_this_visit_is_told_before_it_is_saved_and_no_other_visits():
    early = visit("Day 1", 1, infection_signs=[{"sign": "fever"}])
    review = reviewed(visit("Week 1", 7, straight(-25)), early)

    assert (codes(review, "warnings"), codes(review, "hindrances")) == (["large_overcorrection"], [])


def test_a_visit_without_a_measurement_is_a_visit():
    assert codes(reviewed(visit("Day 1", 1)), "hindrances") == []


def test_an_examination_that_is_named_must_be_there():
    named = visit("Day 1", 1, straight(2))

    assert codes(reviewed(named | {"examination": None}), "hindrances") == ["examination_missing"]
    assert codes(reviewed(named), "hindrances") == []


def test_what_the_clinic_would_refuse_is_refused_here():
    other_day = visit("Day 1", 1, straight(2))
    other_day["follow_up"]["seen_on"] = on(2)

    assert codes(reviewed(other_day), "hindrances") == ["other_day"]
    assert codes(reviewed(visit("Day 1", -1)), "hindrances") == ["seen_before_operation"]
