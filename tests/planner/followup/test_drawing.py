"""The course as pictures: every figure of it stands there, in words too, and nothing that the course does not say."""

import pytest

from tests.planner.examined import straight
from tests.planner.followup.aftercare import cared, told, visit
from tests.planner.mirror import mirrored
from tests.planner.operation.theatre import signed

BOTH = signed("recess-both-mr", straight(40), straight(44, at="near"))
DAY_1 = visit("Day 1", 1, straight(-4))
WEEK_1 = visit("Week 1", 7, straight(-25), straight(2, at="near"))


def drawn(*visits):
    return told(cared(BOTH, *visits))["pictures"]


def words(picture):
    return [mark["words"] for mark in picture["marks"] if "words" in mark]


def test_both_ranges_are_drawn_and_no_vertical_where_there_was_none():
    assert [each["title"] for each in drawn(DAY_1)] == [
        "Horizontal deviation at distance",
        "Horizontal deviation at near",
    ]


def test_a_vertical_deviation_has_pictures_of_its_own_with_its_own_words():
    pictures = drawn(visit("Day 1", 1, straight(-4, -6)))

    assert [each["title"] for each in pictures][2:] == ["Vertical deviation at distance"]
    assert "left hyper 6" in words(pictures[2])


def test_every_figure_stands_beside_its_point_with_its_direction_as_a_word():
    distance, near = drawn(DAY_1, WEEK_1)

    assert {"exo 4", "exo 25", "Day 1", "Week 1"} <= set(words(distance))
    assert {"eso 2", "Week 1"} <= set(words(near))
    assert not {"exo 4", "Day 1"} & set(words(near))


def test_what_lies_outside_the_band_is_told_by_shape_and_by_word():
    distance, near = drawn(DAY_1, WEEK_1)

    assert "outside what was expected" in words(distance)
    assert "outside what was expected" not in words(near)
    assert "Week 1, day 7: exo 25 Δ, outside what was expected" in distance["spoken"]
    assert "Day 1, day 1: exo 4 Δ, inside what was expected" in distance["spoken"]


def test_a_course_without_a_visit_still_shows_what_is_expected():
    (distance, _) = drawn()

    assert distance["spoken"].endswith("not measured since.")
    assert any(mark.get("fill") == "tone" for mark in distance["marks"])


@pytest.mark.parametrize("days", [1, 7, 400])
def test_later_visits_stand_further_to_the_right(days):
    (picture, _) = drawn(visit("First", days, straight(3)), visit("Second", days * 3, straight(5)))
    at = {mark["words"]: mark["x"] for mark in picture["marks"] if mark.get("words") in {"First", "Second"}}

    assert at["First"] < at["Second"] < picture["width_mm"]


def test_no_point_leaves_the_sheet():
    for picture in drawn(DAY_1, visit("Far out", 20, straight(-150), straight(150, at="near"))):
        places = [place for mark in picture["marks"] for place in mark.get("points", [])]

        assert all(0 <= x <= picture["width_mm"] and 0 <= y <= picture["height_mm"] for x, y in places)


def test_the_mirrored_patient_has_the_same_horizontal_pictures_and_the_other_vertical_words():
    care = cared(signed("recess-ir-left", straight(0, 15)), visit("Week 1", 7, straight(2, 3)))
    here, there = told(care)["pictures"], told(mirrored(care))["pictures"]
    turned = {"right hyper 3": "left hyper 3", "left hyper 3": "right hyper 3"}

    assert here[0] == there[0]
    assert "right hyper 3" in words(here[-1])
    assert {turned.get(each, each) for each in words(here[-1])} & set(turned) == set(words(there[-1])) & set(turned)
