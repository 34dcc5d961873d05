"""Own results stand beside the dose of a case: they never change it, and they know when to be silent."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.desk import answer
from planner.maxima import MAXIMA
from tests.planner.examined import straight

BOTH_MR, ONE_EYE = "recess-both-mr", "recess-mr-resect-lr"


def asked(name, **fields):
    said = json.loads(answer(json.dumps({"ask": name, **fields})))
    assert "faults" not in said, said
    return said["answer"]


def case(*readings, **more):
    examination = {"schema": 1, "examined_on": "2026-11-02", "readings": list(readings), **more}
    return {"schema": 1, "examination": examination, "table": "wright-after-parks"}


def past(effect, count=400, **more):
    """Cases that all had the same effect, so many that the table's own weight hardly counts."""
    return [
        {"id": f"00000000-0000-7000-8000-{n:012x}", "promised_pd": 40, "achieved_pd": 40 * effect, "days_after": 50}
        | more
        for n in range(count)
    ]


def column(told, family=BOTH_MR, cases=None):
    return asked("suggest", case=told, families=[{"family": family, "cases": past(0.9) if cases is None else cases}])


def suggested(*given_, **more):
    return column(*given_, **more)["suggestions"][0]


def codes(said):
    return [statement["code"] for statement in said["statements"]]


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("deviation_pd", "effect", "table_mm", "own_mm"),
    [
        (40, 0.8, 5.5, 6.0),  # looked up at 50 Δ
        (50, 1.25, 6.0, 5.5),  # at 40 Δ
        (40, 1.0, 5.5, 5.5),
        (20, 0.8, 3.5, 4.0),  # at 25 Δ
    ],
)
def test_the_table_is_looked_up_where_the_own_effect_leads(deviation_pd, effect, table_mm, own_mm):
    """Both MR recess rows of Wright's appendix: 20 Δ 3.5, 25 Δ 4.0, 40 Δ 5.5, 50 Δ 6.0 mm."""
    said = suggested(case(straight(deviation_pd)), cases=past(effect, 5000))

    assert [(dose["proposed_mm"], dose["own_mm"]) for dose in said["doses"]] == [(table_mm, own_mm)] * 2


def test_what_the_table_s_dose_does_in_these_hands_is_told_with_its_interval():
    said = suggested(case(straight(40)))

    assert said["promised_pd"] == 40
    assert said["does_pd"]["middle"] == pytest.approx(40 * (0.9 * 400 + 20) / 420, abs=0.05)
    assert said["does_pd"]["low"] < said["does_pd"]["middle"] < said["does_pd"]["high"]


@pytest.mark.check_value
def test_what_the_suggested_dose_does_in_these_hands_stands_beside_what_the_table_s_does():
    """40 Δ at 80 %: Wright's row of 50 Δ, 6.0 mm, of which 80 % is 40 Δ; the table's 5.5 mm does 32 Δ."""
    said = suggested(case(straight(40)), cases=past(0.8, 5000))

    assert said["does_pd"]["middle"] == pytest.approx(32, abs=0.1)
    assert said["own_does_pd"]["middle"] == pytest.approx(40, abs=0.1)
    assert said["own_does_pd"]["low"] < 40 < said["own_does_pd"]["high"]


@given(st.sampled_from([20, 30, 40, 45, 60]), st.floats(0.5, 1.6))
@settings(max_examples=15, deadline=None)
def test_the_suggested_dose_does_as_its_millimetres_say(deviation_pd, effect):
    for said in column(case(straight(deviation_pd)), cases=past(effect, 60))["suggestions"]:
        more = [dose["own_mm"] - dose["proposed_mm"] for dose in said["doses"]]
        does, own_does = said["does_pd"], said["own_does_pd"]

        assert (own_does is None) is (said["doses"] == [])
        if more and all(each == 0 for each in more):
            assert own_does == does
        elif more:
            assert (own_does["middle"] > does["middle"]) is (sum(more) > 0)


def test_the_smaller_the_angle_the_wider_is_the_interval_for_what_it_is():
    small, large = (suggested(case(straight(size)))["does_pd"] for size in (20, 50))
    widths = [(does["high"] - does["low"]) / does["middle"] for does in (small, large)]

    assert widths[0] > 1.2 * widths[1]


def test_a_figure_that_the_surgeon_set_changes_no_suggestion():
    plain = case(straight(40))
    changed = plain | {"changes": [{"option": BOTH_MR, "eye": "right", "muscle": "MR", "mm": 3}]}

    assert column(changed) == column(plain)


@given(st.sampled_from([20, 30, 40, 45, 60]), st.floats(0.5, 1.6))
@settings(max_examples=25, deadline=None)
def test_never_beyond_the_widest_maximum_and_never_another_proposal(deviation_pd, effect):
    told = case(straight(deviation_pd))
    before = asked("propose", case=told)
    doses = [dose for said in column(told, cases=past(effect, 60))["suggestions"] for dose in said["doses"]]

    assert asked("propose", case=told) == before
    for dose in doses:
        assert dose["own_mm"] <= MAXIMA[dose["muscle"], dose["operation"]].widest_mm


@given(st.floats(0.5, 1.6), st.floats(0.5, 1.6))
@settings(max_examples=25, deadline=None)
def test_who_does_less_is_never_told_a_smaller_dose(one, other):
    told = case(straight(40))
    least, most = (suggested(told, cases=past(effect, 60))["doses"][0]["own_mm"] for effect in sorted((one, other)))

    assert least >= most


def test_both_eyes_of_a_one_eye_operation_are_told_and_alike():
    right, left = column(case(straight(40)), family=ONE_EYE)["suggestions"]

    assert (right["option"], left["option"]) == (f"{ONE_EYE}-right", f"{ONE_EYE}-left")
    assert [dose["own_mm"] for dose in right["doses"]] == [dose["own_mm"] for dose in left["doses"]]


def test_with_nine_cases_nothing_is_suggested_and_with_ten_something():
    nine, ten = (suggested(case(straight(40)), cases=past(0.8, count)) for count in (9, 10))

    assert (nine["doses"], nine["does_pd"], nine["own_does_pd"]) == ([], None, None)
    assert ten["doses"]
    assert ten["does_pd"]


def test_the_same_half_millimetre_is_said():
    assert "same_dose" in codes(suggested(case(straight(40)), cases=past(1.0)))


@pytest.mark.parametrize(
    ("more", "code"),
    [
        ({"diagnoses": [{"diagnosis": "thyroid eye disease"}]}, "not_with_a_palsy"),
        (
            {"previous_operations": [{"eye": "left", "muscle": "MR", "operation": "recess", "mm": 4, "year": 2020}]},
            "not_after_earlier_operation",
        ),
        (
            {
                "previous_operations": [
                    {"eye": "left", "muscle": "LR", "operation": "unknown", "mm": None, "year": None}
                ]
            },
            "not_after_earlier_operation",
        ),
    ],
)
def test_a_patient_unlike_those_who_taught_gets_no_suggestion(more, code):
    said = suggested(case(straight(40), **more))

    assert (said["doses"], said["does_pd"], codes(said)) == ([], None, [code])


def test_a_dose_for_near_gets_no_suggestion_from_doses_for_distance():
    said = suggested(case(straight(20), straight(40, at="near")) | {"aim": "near"})

    assert (said["doses"], said["does_pd"], codes(said)) == ([], None, ["not_aimed_at_near"])


def test_cases_that_do_not_teach_do_not_count():
    (calibration,) = column(case(straight(40)), cases=past(0.8, days_after=300))["calibrations"]

    assert (calibration["cases"], calibration["look_up_factor"]) == (0, None)


def test_a_family_that_is_not_offered_is_learned_of_and_nothing_is_suggested():
    found = column(case(straight(40)), family="recess-both-lr")

    assert (found["calibrations"][0]["family"], found["suggestions"]) == ("recess-both-lr", [])
