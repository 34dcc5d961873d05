"""What is needed is counted from plans and set-ups, and adds up over days and teams in the right way."""

from dataclasses import replace
from math import ceil

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.card.steps import details
from planner.codec import read
from planner.errors import Refused
from planner.kit import kit, needs, packing
from planner.kit.articles import ARTICLES, Counted
from planner.kit.spare import spare
from planner.records.practice import FigureName, Practice
from planner.setup.figures import figures
from planner.values.kit import CaseNeeds, Need, TeamDay
from planner.values.option import Operation
from planner.values.statement import Level
from tests.planner.setup.prepared import BOTH_EYES, ONE_EYE, planned, sheet

USUAL = figures(None)
SPARING = figures(
    read(
        Practice,
        {
            "schema": 1,
            "decided_by": "Dr Fern",
            "reason": "Two sets are cleaned at noon.",
            "figures": [{"name": "cases_per_set", "value": 2}, {"name": "spare_per_cent", "value": 0}],
        },
    )
)


def case(**pieces):
    return CaseNeeds(needs=tuple(Need(article=name, pieces=count) for name, count in pieces.items()))


def day(*cases, on="2026-12-01", team="one"):
    return TeamDay(on=on, team=team, cases=cases)


def totals(days, standing=USUAL):
    return {line.article: (line.used, line.spare) for line in kit(days, standing)}


@pytest.mark.parametrize(
    ("option", "wishes", "wanted"),
    [
        (
            ONE_EYE,
            {},
            {
                "suture-braided_absorbed": 2,
                "closing_suture": 1,
                "needle-spatula_three_eighths": 4,
                "instrument_set": 1,
                "magnification-loupe": 1,
            },
        ),
        (
            ONE_EYE,
            {"adjustable": True, "avoid_general": True},
            {
                "suture-braided_absorbed": 2,
                "closing_suture": 1,
                "needle-spatula_three_eighths": 4,
                "instrument_set": 1,
                "adjusting_set": 1,
                "prisms": 1,
                "magnification-loupe": 1,
                "block_set": 1,
            },
        ),
        (
            BOTH_EYES,
            {"lost_muscle": True},
            {
                "suture-braided_absorbed": 2,
                "closing_suture": 2,
                "needle-spatula_three_eighths": 4,
                "instrument_set": 1,
                "magnification-microscope": 1,
            },
        ),
    ],
)
def test_an_operation_needs_what_its_plan_and_sheet_say(option, wishes, wanted):
    made = needs(planned(option).option.doses, sheet(option, wishes=wishes))

    assert {each.article: each.pieces for each in made.needs} == wanted


def test_what_the_surgeon_chose_on_the_sheet_is_what_is_packed():
    """Each override of an item that is packed, saved with its reason, changes the count and nothing else does."""
    reason = "Chosen for this patient after a talk with the team."
    wanted = {"suture": "staying", "needle": "spatula_half", "magnification": "microscope", "display": "tablet"}
    chosen = [{"item": item, "choice": choice, "reason": reason} for item, choice in wanted.items()]
    made = needs(planned().option.doses, sheet(ONE_EYE, overrides=chosen))

    assert {each.article: each.pieces for each in made.needs} == {
        "suture-staying": 2,
        "closing_suture": 1,
        "needle-spatula_half": 4,
        "instrument_set": 1,
        "magnification-microscope": 1,
        "tablet_stand": 1,
    }


@pytest.mark.parametrize("operation", [Operation.TUCK, Operation.HARADA_ITO])
def test_a_suture_that_must_stay_is_packed_for_the_operation_whose_card_asks_for_it(operation):
    first, second = planned().option.doses
    made = needs((first, replace(second, operation=operation)), sheet(ONE_EYE))

    assert {"suture-braided_absorbed": 1, "suture-staying": 1}.items() <= {
        each.article: each.pieces for each in made.needs
    }.items()
    assert "stays" in steps(operation) or "non-absorbable" in steps(operation)


def steps(operation):
    return " ".join(each.text for each in details(replace(planned().option.doses[0], operation=operation)).sutures)


@pytest.mark.parametrize(
    ("used", "more"),
    [(0, 0), (1, 1), (5, 1), (6, 2), (10, 2), (11, 3), (100, 20)],
)
def test_a_fifth_is_spare_rounded_up_and_at_least_one(used, more):
    assert spare(used, USUAL) == more
    assert spare(used, USUAL) in (0, max(1, ceil(used * 20 / 100)))


def test_what_is_used_up_adds_over_days_and_what_comes_back_counts_on_the_fullest_day():
    one = case(closing_suture=2, instrument_set=1, prisms=1)
    two_days = [day(one, one), day(one, on="2026-12-02")]

    assert totals(two_days) == {"closing_suture": (6, 2), "instrument_set": (2, 1), "prisms": (1, 0)}


def test_two_teams_of_one_day_each_need_their_own():
    one = case(instrument_set=1, prisms=1)
    apart = [day(one, team="one"), day(one, one, team="two")]

    assert totals(apart) == {"instrument_set": (3, 1), "prisms": (2, 0)}


def test_a_set_serves_as_many_operations_as_the_clinic_says_team_by_team():
    one = case(instrument_set=1, adjusting_set=1)
    apart = [day(one, one, one, team="one"), day(one, team="two")]

    assert totals(apart, SPARING) == {"instrument_set": (3, 1), "adjusting_set": (4, 1)}


def test_an_article_that_nobody_knows_is_refused():
    with pytest.raises(Refused, match="no such article"):
        kit([day(case(crowbar=1))], USUAL)


NEEDS = st.dictionaries(st.sampled_from(sorted(ARTICLES)), st.integers(1, 6), max_size=5).map(lambda each: case(**each))
DAYS = st.lists(
    st.builds(
        lambda on, team, cases: TeamDay(on=on, team=team, cases=tuple(cases)),
        st.sampled_from(["2026-12-01", "2026-12-02", "2026-12-03"]),
        st.sampled_from(["one", "two"]),
        st.lists(NEEDS, max_size=4),
    ),
    max_size=5,
)


@given(DAYS, st.randoms())
def test_no_order_of_the_days_changes_what_is_packed(days, random):
    turned = list(days)
    random.shuffle(turned)

    assert kit(turned, USUAL) == kit(days, USUAL)


@given(DAYS, NEEDS)
def test_one_more_operation_never_needs_less(days, more):
    before = {line.article: line.total for line in kit(days, USUAL)}
    after = {line.article: line.total for line in kit([*days, day(more, on="2026-12-02")], USUAL)}

    assert all(after[article] >= total for article, total in before.items())


@given(DAYS)
def test_used_up_pieces_are_the_plain_sum(days):
    lines = {line.article: line.used for line in kit(days, USUAL)}
    for name, article in ARTICLES.items():
        if article.counted is Counted.CONSUMED:
            summed = sum(
                need.pieces for each in days for one in each.cases for need in one.needs if need.article == name
            )
            assert lines.get(name, 0) == summed


def test_a_packing_list_says_for_which_days_and_whose_practice():
    one = case(instrument_set=1)
    made = packing([day(one, on="2026-12-02"), day(one, one)], None)

    assert [(each.on, each.operations) for each in made.days] == [("2026-12-01", 2), ("2026-12-02", 1)]
    assert made.operations == 3
    assert (made.not_counted, made.notices) == ((), ())
    assert made.spare_words == "Spare: 20 % of what is used, at least 1 of each (common practice)."
    assert USUAL[FigureName.SPARE_PER_CENT] == 20


def test_an_operation_that_nothing_is_counted_for_is_named_by_its_number_and_cautioned_of():
    one, nothing = case(instrument_set=1), case()
    made = packing(
        [day(one, nothing, on="2026-12-02"), day(nothing, one, nothing, nothing, team="two"), day(one)], None
    )

    assert [(each.on, each.team, each.number) for each in made.not_counted] == [
        ("2026-12-01", "two", 1),
        ("2026-12-01", "two", 3),
        ("2026-12-01", "two", 4),
        ("2026-12-02", "one", 2),
    ]
    assert {each.code: each.level for each in made.notices} == {
        "not_counted-1": Level.CAUTION,
        "not_counted-2": Level.CAUTION,
    }
    assert made.notices[0].text.startswith("1 December 2026, two: operations 1, 3 and 4 are not counted")
    assert made.notices[1].text.startswith("2 December 2026, one: operation 2 is not counted")
    assert made.operations == 7


@given(DAYS)
def test_every_operation_of_the_lists_is_counted_or_said_not_to_be(days):
    made = packing(days, None)
    counted = sum(bool(one.needs) for each in days for one in each.cases)

    assert counted + len(made.not_counted) == made.operations
    assert bool(made.not_counted) == bool(made.notices)
