"""A visit is proposed by its day, and what lies ahead is what is planned after it."""

import json

import pytest

from planner.desk import answer
from tests.planner.followup.aftercare import OPERATED_ON, OWN, on, visit


def drafted(days, *visits, practice=None):
    request = {"ask": "draft_follow_up", "operated_on": OPERATED_ON, "seen_on": on(days)}
    request |= {"follow_ups": [each["follow_up"] for each in visits]}
    return json.loads(answer(json.dumps(request | ({"practice": practice} if practice else {}))))["answer"]


@pytest.mark.parametrize(
    ("days", "proposed"),
    [
        (1, "Day 1"),
        (2, "Day 1"),
        (3, "Day 1"),
        (4, "Week 1"),
        (5, "Week 1"),
        (16, "Week 1"),
        (17, None),
        (34, None),
        (35, "Weeks 6 to 8"),
        (71, "Weeks 6 to 8"),
        (72, None),
        (365, "Year 1"),
    ],
)
def test_a_visit_is_the_nearest_planned_one_that_its_day_allows(days, proposed):
    assert drafted(days)["proposed"] == proposed


def test_a_visit_that_was_kept_is_not_proposed_again():
    assert drafted(2, visit("Day 1", 1))["proposed"] is None
    assert drafted(5, visit("Day 1", 1))["proposed"] == "Week 1"


def test_before_the_operation_nothing_is_proposed():
    told = drafted(-1)

    assert (told["proposed"], told["days_after"]) == (None, -1)


def test_ahead_is_what_comes_after_this_visit():
    told = drafted(45, visit("Day 1", 1))
    ahead = [each["visit"]["name"] for each in told["ahead"]]

    assert ahead == ["Month 6", "Year 1", "Year 2", "Year 3", "Year 4", "Year 5"]
    assert (told["ahead"][0]["from_on"], told["ahead"][0]["to_on"]) == (on(150), on(210))


def test_a_visit_that_comes_early_is_not_ahead_of_itself():
    assert drafted(35)["ahead"][0]["visit"]["name"] == "Month 6"


def test_visits_planned_anew_are_proposed_in_place_of_the_usual_ones():
    anew = [{"name": "Week 3", "first_day": 20, "last_day": 24}]
    assert drafted(21, visit("Day 1", 1, ahead=anew))["proposed"] == "Week 3"


def test_a_clinic_with_visits_of_its_own_has_those_proposed_and_is_named_for_them():
    said = drafted(30, practice=OWN)

    assert said["proposed"] == "Week 4"
    assert [each["visit"]["name"] for each in said["planned"]] == ["Day 1", "Week 4"]
    assert said["statements"][1]["provenance"]["mark"] == "this clinic's practice"
