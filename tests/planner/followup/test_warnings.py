"""What must not wait is said with its reason, and what may wait is not cried out."""

import pytest

from tests.planner.examined import straight
from tests.planner.followup.aftercare import cared, codes, on, told, visit
from tests.planner.operation.theatre import ESO_40, ONE_EYE_40, signed

EXO_30 = signed("recess-both-lr", straight(-30))


def duction(eye, muscle, grade):
    return [{"eye": eye, "muscle": muscle, "grade": grade}]


@pytest.mark.parametrize(
    ("horizontal_pd", "grade", "found"),
    [
        (-15, -2, ["slipped_muscle-right-mr"]),
        (-14.9, -2, []),
        (-15, -1, []),
        (15, -4, []),
    ],
)
def test_a_slipped_muscle_is_far_from_its_pull_and_weak_in_its_field(horizontal_pd, grade, found):
    care = cared(ESO_40, visit("Day 1", 1, straight(horizontal_pd), ductions=duction("right", "MR", grade)))

    assert codes(care) == [found]


def test_the_muscle_that_is_named_is_the_one_that_is_weak():
    (warning,) = told(cared(ESO_40, visit("Day 1", 1, straight(-16), ductions=duction("left", "MR", -3))))["visits"][0][
        "warnings"
    ]

    assert warning["text"].startswith("Left eye, medial rectus: 16 Δ away from its pull")
    assert warning["level"] == "caution"
    assert warning["provenance"]["mark"] == "from memory, verify"


def test_a_muscle_that_was_not_operated_does_not_slip():
    care = cared(ESO_40, visit("Day 1", 1, straight(-16), ductions=duction("right", "LR", -3)))

    assert codes(care) == [[]]


def test_weakness_that_was_there_before_is_no_sign():
    weak_before = signed("recess-both-mr", straight(40), ductions=duction("right", "MR", -2))
    care = cared(weak_before, visit("Day 1", 1, straight(-16), ductions=duction("right", "MR", -2)))

    assert codes(care) == [[]]


def test_after_an_exotropia_the_lateral_rectus_slips_into_eso():
    care = cared(EXO_30, visit("Day 1", 1, straight(16), ductions=duction("left", "LR", -3)))

    assert codes(care) == [["slipped_muscle-left-lr"]]


def test_of_a_resected_muscle_only_more_than_the_plan_expected_counts():
    high_pd = ONE_EYE_40[0]["option"]["prediction"]["distance"]["high_pd"]
    weak = duction("right", "LR", -3)
    expected = cared(ONE_EYE_40, visit("Day 1", 1, straight(high_pd), ductions=weak))
    more = cared(ONE_EYE_40, visit("Day 1", 1, straight(max(high_pd + 1, 15)), ductions=weak))

    assert codes(expected) == [[]]
    assert codes(more) == [["slipped_muscle-right-lr"]]


def test_six_weeks_later_a_stretched_scar_is_thought_of_too():
    weak = duction("right", "MR", -3)
    care = cared(
        ESO_40,
        visit("Late", 42, straight(-16), ductions=weak),
        visit("Later", 43, straight(-16), ductions=weak),
    )

    assert codes(care) == [["slipped_muscle-right-mr"], ["stretched_scar-right-mr"]]


@pytest.mark.parametrize(("horizontal_pd", "found"), [(-20, ["large_overcorrection"]), (-19.9, []), (30, [])])
def test_a_large_overcorrection_does_not_wait(horizontal_pd, found):
    assert codes(cared(ESO_40, visit("Day 1", 1, straight(horizontal_pd)))) == [found]


@pytest.mark.parametrize(
    ("days", "horizontal_pd", "constancy", "found"),
    [
        (14, 10, "constant", ["constant_eso_in_child"]),
        (13, 10, "constant", []),
        (14, 9.9, "constant", []),
        (14, 10, "intermittent", []),
        (14, 10, "latent", []),
        (14, 10, None, ["constant_eso_in_child"]),
        (14, 9.9, None, []),
    ],
)
def test_a_child_who_stays_eso_after_an_exotropia_does_not_wait(days, horizontal_pd, constancy, found):
    care = cared(EXO_30, visit("Early", days, straight(horizontal_pd), constancy=constancy))

    assert codes(care) == [found]


@pytest.mark.parametrize(("constancy", "said"), [("constant", "10 Δ all the time,"), (None, "nobody noted whether")])
def test_where_constancy_was_not_noted_the_warning_says_so(constancy, said):
    (visited,) = told(cared(EXO_30, visit("Early", 14, straight(10), constancy=constancy)))["visits"]

    assert said in visited["warnings"][0]["text"]


@pytest.mark.parametrize(("born_on", "found"), [("2018-12-09", ["constant_eso_in_child"]), ("2017-12-09", [])])
def test_it_is_a_child_up_to_the_ninth_birthday(born_on, found):
    plan, signature = EXO_30
    pieces = (plan | {"case": plan["case"] | {"born_on": born_on}}, signature)
    care = cared(pieces, visit("Week 2", 14, straight(12), constancy="constant"), operation=cared(EXO_30)["operation"])

    assert codes(care) == [found]


def test_signs_of_infection_are_told_with_their_side_and_dropped_vision_by_itself():
    signs = [{"sign": "swollen lids", "eye": "left"}, {"sign": "fever", "eye": None}]
    dropped = [*signs, {"sign": "vision has dropped", "eye": "left"}]
    care = cared(ESO_40, visit("Day 3", 3, infection_signs=signs), visit("Day 4", 4, infection_signs=dropped))

    assert codes(care) == [["infection_signs"], ["infection_signs", "vision_dropped"]]
    assert "left eye: swollen lids" in told(care)["visits"][0]["warnings"][0]["text"]


def test_nothing_found_is_no_warning():
    assert codes(cared(ESO_40, visit("Day 3", 3, infection_signs=[]))) == [[]]


@pytest.mark.parametrize(("days", "said"), [(1, False), (2, True), (6, True), (7, False)])
def test_in_the_days_of_infections_one_is_told_to_ask(days, said):
    notices = told(cared(ESO_40, today=on(days)))["notices"]

    assert [each["code"] for each in notices] == (["infection_window"] if said else [])


def test_who_looked_today_is_not_told_to_look():
    looked = visit("Day 3", 3, infection_signs=[])

    assert told(cared(ESO_40, looked, today=on(3)))["notices"] == []
    assert told(cared(ESO_40, looked, today=on(4)))["notices"] != []


@pytest.mark.parametrize(("vertical_pd", "found"), [(10, []), (-10, ["slipped_muscle-left-ir"])])
def test_a_weak_inferior_rectus_lets_its_own_eye_rise(vertical_pd, found):
    """Left hyper is negative: the left eye rises when its inferior rectus no longer pulls it down."""
    pieces = signed("recess-ir-left", straight(0, 15))
    care = cared(pieces, visit("Day 1", 1, straight(0, vertical_pd), ductions=duction("left", "IR", -2)))

    assert codes(care) == [found]
