"""The figures of the page against what was published, and the small figures against the numbers beside them."""

from math import hypot

import pytest
from scipy.stats import beta, norm

from planner.counselling import counselling
from planner.counselling.people import to_a_hundred
from planner.counselling.tenths import tenths
from planner.plans import plan
from planner.values.counselling import Figure
from planner.values.picture import Disc
from tests.planner.patients import before, case
from tests.planner.test_plans import choice_of


def page_of(horizontal_pd, option, **examined):
    return counselling(plan(choice_of(case(horizontal_pd, **examined), option)))


def passage(page, code):
    (found,) = (each for each in (*page.expected, *page.days, *page.risks) if each.code == code)
    return found


def counts(page, code):
    return [(group.figure, group.count) for group in passage(page, code).array.groups]


def values(page, code):
    found = passage(page, code)
    sentences = [*found.sentences, *([found.headline] if found.headline else [])]
    return {name: value for said in sentences for name, value in said.values.items()}


@pytest.fixture(scope="module")
def usual():
    return page_of(40, "recess-both-mr")


@pytest.fixture(scope="module")
def three_recti():
    earlier = (before("right", "SR"), before("right", "IR"))
    return page_of(40, "recess-mr-resect-lr-right", previous_operations=earlier)


@pytest.mark.check_value
def test_ischaemia_is_2_of_87_with_the_printed_exact_interval(three_recti):
    """Strabismus 2018 prints 2.3 % (0.3-8.1); SciPy's beta quantiles say the same."""
    low, high = beta.ppf(0.025, 2, 86), beta.ppf(0.975, 3, 85)

    assert values(three_recti, "ischaemia") == {"seen": "2", "operated": "87", "low": "0.3", "high": "8.1"}
    assert (f"{100 * low:.1f}", f"{100 * high:.1f}") == ("0.3", "8.1")
    assert counts(three_recti, "ischaemia") == [(Figure.FULL, 2), (Figure.BARRED, 6), (Figure.OPEN, 92)]


@pytest.mark.check_value
def test_another_operation_is_the_registers_rate_of_one_year(usual):
    """Repka et al., IRIS registry 2013-15: 6.7 % within a year."""
    assert values(usual, "again") == {"percent": "6.7"}
    assert counts(usual, "again") == [(Figure.FULL, 7), (Figure.OPEN, 93)]


@pytest.mark.check_value
def test_a_perforation_is_728_of_554000_muscles_and_up_to_2_8_of_100_patients(usual):
    """Survey 728/554,000 = 0.13 %, other series up to 2.8 % of cases."""
    assert values(usual, "perforation") == {"muscles": "13", "percent": "2.8"}
    assert counts(usual, "perforation") == [(Figure.BARRED, 3), (Figure.OPEN, 97)]


@pytest.mark.check_value
def test_the_pulse_slows_in_30_to_85_of_100(usual):
    """Several series of the oculocardiac reflex, by definition 30 to 85 %."""
    assert values(usual, "pulse") == {"low": "30", "high": "85"}
    assert counts(usual, "pulse") == [(Figure.FULL, 30), (Figure.BARRED, 55), (Figure.OPEN, 15)]


@pytest.mark.check_value
def test_the_chances_of_a_usual_case_are_those_of_a_normal_distribution(usual):
    """Measurement +-7.3 Δ (PEDIG 2009, 95 %) and 0.62 Δ/mm on 11 mm (Bayramlar): SD and chances by SciPy."""
    sd = hypot(7.3 / 1.96, 0.62 * 11)
    percent = 100 * (norm.cdf(10 / sd) - norm.cdf(-10 / sd))
    (straight, _), (under, _), (over, _) = ((g.count, g) for g in passage(usual, "chances").array.groups)

    assert abs(straight - percent) < 1
    assert under == over == round(100 * norm.sf(10 / sd))
    assert values(usual, "chances")["tenths"] == f"{round(percent / 10)}"


def test_what_was_not_published_has_no_figure(usual):
    for code in ("double_vision", "muscle"):
        assert passage(usual, code).array is None
        assert values(usual, code) == {}
        assert passage(usual, code).origin.mark.text == "common practice"


def test_what_is_from_memory_says_so(usual):
    assert passage(usual, "infection").origin.mark.text == "from memory, verify"


def test_ischaemia_is_named_only_where_three_muscles_of_an_eye_are_reached(usual, three_recti):
    assert "ischaemia" in {each.code for each in three_recti.risks}
    assert "ischaemia" not in {each.code for each in usual.risks}


@pytest.mark.parametrize(
    ("percent", "text", "figures"),
    [
        (7.9, "Fewer than 1 of 10 people", {}),
        (8.0, "About {tenths} of 10 people", {"tenths": "1"}),
        (12.0, "About {tenths} of 10 people", {"tenths": "1"}),
        (12.1, "About {low} to {high} of 10 people", {"low": "1", "high": "2"}),
        (74.3, "About {low} to {high} of 10 people", {"low": "7", "high": "8"}),
        (78.0, "About {tenths} of 10 people", {"tenths": "8"}),
        (87.9, "About {low} to {high} of 10 people", {"low": "8", "high": "9"}),
        (92.0, "About {tenths} of 10 people", {"tenths": "9"}),
        (92.1, "More than 9 of 10 people", {}),
    ],
)
def test_a_chance_is_said_in_tenths_and_no_finer(percent, text, figures):
    said = tenths(percent)

    assert said.text.startswith(f"{text} are expected to have straight")
    assert said.values == figures


@pytest.mark.parametrize(
    ("shares", "whole"),
    [
        ((74.3, 17.4, 8.3), (74, 18, 8)),
        ((80.4, 9.8, 9.8), (80, 10, 10)),
        ((33.3, 33.3, 33.4), (33, 33, 34)),
        ((100.0, 0.0, 0.0), (100, 0, 0)),
        ((99.4, 0.3, 0.2), (100, 0, 0)),
    ],
)
def test_shares_become_a_hundred_whole_people(shares, whole):
    assert to_a_hundred(shares) == whole


def test_as_many_figures_are_drawn_of_each_shape_as_are_counted(three_recti):
    """A head is a disc; what is full is filled with ink, so that no colour is needed."""
    for each in (*three_recti.expected, *three_recti.risks):
        if each.array:
            heads = [mark for mark in each.array.marks if isinstance(mark, Disc)]
            full = sum(group.count for group in each.array.groups if group.figure is Figure.FULL)
            assert len(heads) == sum(group.count for group in each.array.groups) == 100
            assert sum(head.fill == "ink" for head in heads) == full
            assert len({(head.x, head.y) for head in heads}) == 100
            assert len({group.figure for group in each.array.groups}) == len(each.array.groups)
