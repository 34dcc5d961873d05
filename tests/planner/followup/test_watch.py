"""What must not wait is told until somebody has looked again, over many operations at once."""

import json

from planner.desk import answer
from tests.planner.examined import straight
from tests.planner.followup.aftercare import cared, on, told, visit
from tests.planner.operation.theatre import signed

BOTH = signed("recess-both-mr", straight(40), straight(44, at="near"))
ONE, OTHER = (f"0190a0b0-0000-7000-8000-00000000010{number}" for number in (1, 2))
OVER = visit("Day 1", 1, straight(-25))
FEVER = [{"sign": "fever"}]


def watched(*cares):
    operations = [{"id": id_, "care": care} for id_, care in zip((ONE, OTHER), cares, strict=False)]
    return json.loads(answer(json.dumps({"ask": "visits_watched", "operations": operations})))["answer"]


def warnings(*visits):
    (one,) = watched(cared(BOTH, *visits))
    return [each["code"] for each in one["warnings"]]


def test_each_operation_is_told_by_its_id_with_its_latest_visit():
    both = watched(cared(BOTH, OVER), cared(BOTH))

    assert [(each["id"], each["visit"], each["seen_on"]) for each in both] == [
        (ONE, "Day 1", on(1)),
        (OTHER, None, None),
    ]
    assert [len(each["warnings"]) for each in both] == [1, 0]


def test_a_visit_at_which_nothing_was_measured_clears_nothing():
    assert warnings(OVER, visit("Week 1", 7)) == ["large_overcorrection"]


def test_a_later_measurement_clears_an_alignment():
    assert warnings(OVER, visit("Week 1", 7, straight(-5))) == []


def test_signs_of_infection_stand_until_somebody_has_looked_again():
    signs = visit("Day 1", 1, infection_signs=FEVER)

    assert warnings(signs, visit("Week 1", 7, straight(0))) == ["infection_signs"]
    assert warnings(signs, visit("Week 1", 7, infection_signs=[])) == []


def test_the_days_of_infection_are_told_as_a_notice_of_today():
    (one,) = watched(cared(BOTH, today=on(3)))

    assert [each["code"] for each in one["notices"]] == ["infection_window"]


def test_the_course_of_one_operation_tells_the_same_warnings_at_its_head():
    care = cared(BOTH, OVER, visit("Week 1", 7))
    found = told(care)

    assert [each["code"] for each in found["warnings"]] == ["large_overcorrection"]
    assert [len(each["warnings"]) for each in found["visits"]] == [1, 0]
