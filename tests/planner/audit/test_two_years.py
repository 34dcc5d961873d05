"""The simulated clinic, whose truth is known: the audit sees whose recessions do less than the table says."""

import re

import pytest

from fixtures.demo.two_years.truth import BOTH_MEDIAL, HABITS
from tests.planner.audit.generated import said


@pytest.mark.parametrize("habit", HABITS, ids=lambda habit: f"{habit.surgeon.username} {habit.family}")
def test_the_mean_of_achieved_minus_expected_is_what_was_planted(simulated, habit):
    """Within 1 Δ and three standard errors of the effect that is missing times what was expected."""
    mine = [
        each
        for each in simulated
        if (each["surgeon"], each["family"]) == (habit.surgeon.full_name, habit.family)
        and each["reoperated_days"] is None
    ]
    made = said("audit", results=mine, by="all")["answer"]
    chart = next(each for each in made["groups"][0]["charts"] if each["code"] == "achieved")
    mean, deviation = (
        float(each.replace("\N{MINUS SIGN}", "-"))
        for each in re.findall("([+\N{MINUS SIGN}]?[0-9.]+)\xa0Δ", chart["says"][1])
    )
    promised = sum(abs(each["before_pd"] - each["expected_pd"]) for each in mine) / len(mine)

    assert mean == pytest.approx(-(1 - habit.effect) * promised, abs=1 + 3 * deviation / len(mine) ** 0.5)
    if habit.effect < 1:
        assert mean < -2


def test_surgeons_stand_apart_where_their_truth_does(simulated):
    medial = [each for each in simulated if each["family"] == BOTH_MEDIAL]
    lines = {line["name"]: line for line in said("audit", results=medial, by="surgeon")["answer"]["lines"]}
    shares = {name: float(re.match(r"\d+", line["success_words"])[0]) for name, line in lines.items()}
    by_effect = sorted((habit for habit in HABITS if habit.family == BOTH_MEDIAL), key=lambda habit: habit.effect)

    assert shares[by_effect[0].surgeon.full_name] < shares[by_effect[-1].surgeon.full_name]
