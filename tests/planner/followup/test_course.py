"""The alignment over time stands against what was signed, and against nothing that was worked out since."""

import json

import pytest

from planner.desk import answer
from tests.planner.examined import straight
from tests.planner.followup.aftercare import cared, on, told, visit
from tests.planner.mirror import mirrored
from tests.planner.operation.theatre import ESO_40, IDS, ONE_EYE_40, done, drafted, signed, with_muscle

BOTH = signed("recess-both-mr", straight(40), straight(44, at="near"))


def line(care, direction="horizontal", at="distance"):
    return told(care)[direction][at]


def test_the_band_is_the_signed_expectation_as_it_stands_in_the_plan():
    expected = BOTH[0]["option"]["prediction"]
    for at in ("distance", "near"):
        band = line(cared(BOTH), at=at)["expected"]

        assert band == {name: expected[at][name] for name in ("mean_pd", "low_pd", "high_pd")}


def test_visits_stand_in_the_order_of_their_days_with_their_own_error():
    """±4.1 Δ at distance between 10 and 20 Δ: Holmes et al., Arch Ophthalmol 2009;127:59-65."""
    care = cared(BOTH, visit("Weeks 6 to 8", 45, straight(12)), visit("Day 1", 1, straight(-4)))
    points = line(care)["points"]

    assert [(each["at"], each["days_after"], each["value_pd"]) for each in points] == [
        ("Day 1", 1, -4.0),
        ("Weeks 6 to 8", 45, 12.0),
    ]
    assert points[1]["limits_pd"] == 4.1


@pytest.mark.parametrize(("over", "inside"), [(-0.1, True), (0.0, True), (0.1, False)])
def test_the_edge_of_the_band_is_inside_it(over, inside):
    high_pd = line(cared(BOTH))["expected"]["high_pd"]

    (point,) = line(cared(BOTH, visit("Day 1", 1, straight(round(high_pd + over, 1)))))["points"]
    assert point["is_inside"] is inside


def test_the_plans_correction_is_read_and_another_one_is_told():
    with_both = visit("Day 1", 1, straight(2), straight(20, correction="without"))
    without = visit("Week 1", 7, straight(20, correction="without"))
    found = told(cared(BOTH, with_both, without))
    points = found["horizontal"]["distance"]["points"]

    assert [(each["value_pd"], each["other_correction"]) for each in points] == [(2.0, False), (20.0, True)]
    assert [[each["code"] for each in kept["statements"]] for kept in found["visits"]] == [[], ["other_correction"]]


def test_an_adjustment_stands_there_before_and_after_it():
    adjustment = {
        "schema": 1,
        "operation_id": IDS["operation"],
        "operation_digest": "0" * 64,
        "adjusted_at": f"{on(0)}T17:00:00+01:00",
        "surgeon_name": "Dr. Mira Example",
        "before": [{"range": "distance", "horizontal_pd": -12}],
        "moved": [{"eye": "right", "muscle": "MR", "way": "tighten", "mm": 1}],
        "after": [{"range": "distance", "horizontal_pd": -2}],
    }
    found = told(cared(BOTH, visit("Day 1", 1, straight(0)), adjustment=adjustment))
    points = found["horizontal"]["distance"]["points"]

    assert [(each["at"], each["value_pd"]) for each in points] == [
        ("Before adjustment", -12.0),
        ("After adjustment", -2.0),
        ("Day 1", 0.0),
    ]
    assert "adjusted" in {each["code"] for each in found["statements"]}


def test_another_operation_than_planned_is_said_beside_the_band():
    record = with_muscle(drafted(ESO_40), "left", "MR", done=done("recess", 5.0), reason="Tight on traction.")

    assert "not_as_planned" in {each["code"] for each in told(cared(ESO_40, operation=record))["statements"]}
    assert "not_as_planned" not in {each["code"] for each in told(cared(ESO_40))["statements"]}


def test_readings_that_cannot_be_are_told_and_the_other_visits_stay():
    impossible = straight(60, technique={"material": "glass", "held": "frontal", "arrangement": "stacked"})
    found = told(cared(BOTH, visit("Day 1", 1, impossible), visit("Week 1", 7, straight(3))))

    assert [each["code"] for each in found["visits"][0]["statements"]] == ["readings_refused"]
    assert [each["at"] for each in found["horizontal"]["distance"]["points"]] == ["Week 1"]


def test_the_mirrored_patient_has_the_mirrored_course():
    visits = (
        visit("Day 1", 1, straight(-22, 4), ductions=[{"eye": "right", "muscle": "MR", "grade": -3}]),
        visit("Day 4", 4, infection_signs=[{"sign": "swollen lids", "eye": "left"}]),
    )
    care = cared(ONE_EYE_40, *visits, today=on(3))

    assert figures(told(mirrored(care))) == in_the_mirror(figures(told(care)))


def test_a_vertical_expectation_turns_in_the_mirror():
    care = cared(signed("recess-ir-left", straight(0, 15)), visit("Week 1", 7, straight(0, 3)))
    expected = line(care, "vertical")["expected"]

    assert (expected["mean_pd"], expected["low_pd"] < 0 < expected["high_pd"]) == (0.0, True)
    assert figures(told(mirrored(care))) == in_the_mirror(figures(told(care)))


def figures(found):
    """All but its pictures, whose own mirror stands in ``test_drawing``."""
    return {name: value for name, value in found.items() if name != "pictures"}


def in_the_mirror(found):
    """Vertical figures are right hyper + and turn, an interval ends where it began."""
    turned = mirrored(found)
    for each in turned["vertical"].values():
        each["before_pd"] = None if each["before_pd"] is None else 0.0 - each["before_pd"]
        band = each["expected"]
        if band:
            low, high = (0.0 - band["high_pd"], 0.0 - band["low_pd"])
            each["expected"] = {"mean_pd": 0.0 - band["mean_pd"], "low_pd": low, "high_pd": high}
    return turned


def test_the_desk_answers_and_refuses():
    care = json.loads(json.dumps(cared(BOTH, visit("Day 1", 1, straight(3)), today=on(1))))

    assert "answer" in json.loads(answer(json.dumps({"ask": "course", **care})))
    assert json.loads(answer(json.dumps({"ask": "course"})))["faults"]
