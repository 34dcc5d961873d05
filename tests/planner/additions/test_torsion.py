"""Harada-Ito: one series, a mean and its interval, and no dose."""

import pytest

from tests.planner.additions.pieces import additions, levels, work


def test_the_series_mean_is_expected():
    """Flodin et al. 2022: -10.4 to -2.7 degrees, a mean correction of 7.7 (95 % CI 6.27-9.21)."""
    option = additions(20, excyclotorsion_right_deg=10.4)["harada-ito-right-so"]
    (expected,) = option.expected

    assert work(option) == {("right", "SO", "harada-ito"): None}
    assert (expected.before, expected.correction, expected.residual) == (10.4, 7.7, 2.7)
    assert (expected.statement.facts["low_deg"], expected.statement.facts["high_deg"]) == (6.27, 9.21)
    assert expected.spread is None


@pytest.mark.parametrize(
    ("right", "left", "offered"),
    [
        (6.2, None, set()),
        (6.27, None, {"harada-ito-right-so"}),
        (-10, None, set()),
        (None, 9, {"harada-ito-left-so"}),
        (8, 9, {"harada-ito-right-so", "harada-ito-left-so", "harada-ito-both-so"}),
    ],
)
def test_it_is_offered_where_the_mean_would_not_turn_the_eye_the_other_way(right, left, offered):
    assert set(additions(20, excyclotorsion_right_deg=right, excyclotorsion_left_deg=left)) == offered


def test_what_both_eyes_together_give_is_not_invented():
    option = additions(20, excyclotorsion_right_deg=8, excyclotorsion_left_deg=9)["harada-ito-both-so"]

    assert [each.correction for each in option.expected] == [None, None]
    assert levels(option)["no_published_dose-both-so"] == "caution"
