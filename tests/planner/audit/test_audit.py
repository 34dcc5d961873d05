"""Results said and drawn: everybody counted, small numbers said to be small, every chart with its figures."""

import re

import pytest
from scipy import stats

from planner.card.pdf.faces import lacks
from planner.results.definitions.pedig_exotropia_adapted import DIFFERENCES
from planner.results.report import FEW
from planner.values.picture import Disc, Label
from tests.planner.audit.generated import SURGEONS, audited, results, said

MANY = results(160)


def of_all(found, **more):
    (group,) = audited(found, by="all", **more).groups
    return group


def number(group, label):
    return next(each.words for each in group.numbers if each.label == label)


def chart(group, code):
    return next(each for each in group.charts if each.code == code)


def left_over(*figures):
    """Operations for 30 Δ of which so much was left after 60 days."""
    plain = {**MANY[0], "before_pd": 30, "expected_pd": 0, "reoperated_days": None}
    return [
        {
            **plain,
            "id": f"00000000-0000-7000-8000-{place:012x}",
            "seen": [] if figure is None else [{"days_after": 60, "distance_pd": figure}],
        }
        for place, figure in enumerate(figures)
    ]


@pytest.mark.check_value
def test_the_words_of_success_are_scipy_s_exact_interval():
    """SciPy 1.17, rounded to whole percent."""
    group = of_all(left_over(*([3] * 41), *([25] * 7), *([None] * 12)))
    exact = stats.binomtest(41, 48).proportion_ci(method="exact")
    judged = next(each for each in group.judged if each.id == "within-10")

    assert judged.share_words.split() == [f"{41 / 48 * 100:.0f}", "%"]
    assert judged.interval_words.split() == [f"{exact.low * 100:.0f}", "to", f"{exact.high * 100:.0f}", "%"]
    assert judged.counts_words == "41 of 48 judged, 12 missing"
    assert re.findall(r"\d+", judged.extremes) == [f"{41 / 60 * 100:.0f}", f"{53 / 60 * 100:.0f}"]


@pytest.mark.check_value
def test_the_figures_of_how_long_it_lasts_are_scipy_s():
    """SciPy's product-limit estimate (1.17) from the first visit that counts, at six and twelve months, in percent."""
    group = of_all(MANY)
    followed = [
        ((min(lost), True) if lost else (visits[-1]["days_after"], False), visits[0]["days_after"])
        for each in MANY
        for again in [each["reoperated_days"] or 9999]
        if (visits := [visit for visit in each["seen"] if 28 <= visit["days_after"] < again])
        and abs(visits[0]["distance_pd"]) <= 10
        for lost in [
            [visit["days_after"] for visit in visits if abs(visit["distance_pd"]) > 10]
            + ([again] if each["reoperated_days"] else [])
        ]
    ]
    followed = [(until - entered, failed) for (until, failed), entered in followed]
    curve = stats.ecdf(
        stats.CensoredData(
            uncensored=[days for days, failed in followed if failed],
            right=[days for days, failed in followed if not failed],
        )
    ).sf
    rows = {row[0]: row for row in chart(group, "lasting").figures.rows}

    for months in (6, 12):
        share = float(curve.evaluate(months * 365.25 / 12))
        assert rows[f"{months} months"][2].split()[0] == f"{share * 100:.0f}"


def test_a_definition_that_is_not_as_published_says_so_by_name_and_each_difference_in_the_rules():
    made = audited(MANY, by="all")
    (judged,) = (each for each in made.groups[0].judged if each.id == "pedig-exotropia-adapted")
    rule = next(each.text for each in made.rules if each.code == judged.id)

    assert judged.definition.startswith("adapted from")
    assert int(re.match(r"\d+ of (\d+) judged", judged.counts_words)[1]) > FEW
    assert judged.provenance.source.startswith("adapted from")
    assert DIFFERENCES
    assert not [each for each in DIFFERENCES if each not in rule]


def test_what_is_judged_by_nothing_is_said():
    rules = {rule.code: rule.text for rule in audited(MANY).rules}

    assert "judged by nothing here" in rules["scope"]
    assert "two surgeons of one name are counted together" in rules["surgeons_by_name"]
    assert "a second plan of one sitting does not" in rules["operated_again_that_day"]


def test_who_is_not_followed_is_told_with_the_reason():
    early, late = {"days_after": 1, "distance_pd": -12}, {"days_after": 60, "distance_pd": 0}
    found = left_over(0, 25, None, None)
    found[0]["seen"] = [early, late]
    found[3] |= {"seen": [early, late], "reoperated_days": 20}
    lasting = chart(of_all(found), "lasting")

    assert lasting.says[0].startswith("Of 1 within 10 Δ at the first visit from day 28 on, 0 lost it")
    assert lasting.says[1] == (
        "Not in this chart: 1 beyond 10 Δ at the first visit that counts, 1 operated again before such a visit, "
        "1 without such a visit."
    )
    labels = [mark.words for mark in lasting.picture.marks if isinstance(mark, Label)]
    assert any(words.startswith("Since the first visit that counts") for words in labels)


def test_everybody_is_counted_whether_seen_or_not():
    group = of_all(left_over(0, 4, 25, None, None))

    assert number(group, "Operated") == "5"
    assert number(group, "Seen in the window").startswith("3 of 5, 60")
    assert number(group, "Missing in the window").startswith("2 of 5, 40")


def test_who_was_operated_again_in_time_is_no_missing_person_but_a_failure_and_the_rules_say_so():
    made = audited([{**each, "reoperated_days": 10} for each in left_over(None, 0)] + left_over(*[0] * 8)[2:], by="all")
    (group,) = made.groups
    judged = next(each for each in group.judged if each.id == "within-10")

    assert number(group, "Operated again by day 120").startswith("2 of 8")
    assert number(group, "Missing in the window").startswith("0 of 8")
    assert judged.counts_words == "6 of 8 judged, a small number, 2 of them failed because operated again"
    assert chart(group, "watch").says[2].endswith("in 8 cases judged.")
    assert (
        "counts as a failure by every definition of that window"
        in {rule.code: rule.text for rule in made.rules}["operated_again"]
    )


@pytest.mark.parametrize(("count", "small"), [(FEW - 1, True), (FEW, False)])
def test_a_small_number_is_said_to_be_small(count, small):
    codes = [each.code for each in of_all(left_over(*[0] * count)).notices]

    assert ("small_number" in codes) is small


@pytest.mark.parametrize(("missing", "told"), [(10, False), (11, True)])
def test_many_missing_are_told_beyond_a_fifth(missing, told):
    codes = [each.code for each in of_all(left_over(*[0] * (50 - missing), *[None] * missing)).notices]

    assert ("many_missing" in codes) is told


def test_one_s_own_group_stands_first_and_is_the_one_in_full():
    for own in SURGEONS:
        made = audited(MANY, by="surgeon", own=own)

        assert [line.own for line in made.lines] == [True, False]
        assert [(group.name, group.own) for group in made.groups] == [(own, True)]


def test_groups_are_called_by_words():
    assert {line.words for line in audited(MANY, by="family").lines} == {
        "recess both MR",
        "recess LR resect MR",
        "recess MR resect LR",
    }
    assert [line.words for line in audited(MANY, by="table").lines] == ["Wright, after Parks"]
    assert [line.words for line in audited(MANY, by="all", clinic="Island clinic").lines] == ["Island clinic"]


def test_any_groups_can_be_had_in_full_and_their_cases_are_all_cases():
    names = [line.name for line in audited(MANY, by="diagnosis").lines]
    groups = audited(MANY, by="diagnosis", only=names).groups

    assert sorted(group.name for group in groups) == sorted(names)
    assert sum(group.cases for group in groups) == len(MANY)


@pytest.mark.parametrize(
    ("left", "words", "outside"),
    [(2, "up to 2, either way", False), (-2.5, "exo over 2 to 6", False), (10, "eso over 6 to 10", False),
     (-10, "exo over 6 to 10", False), (10.5, "eso over 10 to 14", True), (-11, "exo over 10 to 14", True)],
)  # fmt: skip
def test_ten_belongs_to_success_in_the_bars_as_everywhere(left, words, outside):
    residual = chart(of_all(left_over(left)), "residual")

    assert [row[0] for row in residual.figures.rows] == [words]
    assert residual.says[1].startswith("0 of 1" if outside else "1 of 1")


def test_every_chart_has_figures_that_add_up_to_who_was_seen_or_judged():
    group = of_all(MANY)
    seen = int(number(group, "Seen in the window").split()[0])
    judged = len(MANY) - int(number(group, "Missing in the window").split()[0])

    for code, cases in (("achieved", seen), ("residual", seen), ("watch", judged)):
        assert sum(int(row[1]) for row in chart(group, code).figures.rows) == cases
    for each in group.charts:
        assert all(len(row) == len(each.figures.columns) for row in each.figures.rows)


def test_a_crowd_of_cases_is_drawn_by_number():
    few, crowd = (chart(of_all(results(count)), "achieved").picture for count in (100, 900))

    assert sum(isinstance(mark, Disc) for mark in crowd.marks) < 300
    assert len({mark.radius_mm for mark in few.marks if isinstance(mark, Disc)}) <= 2


def test_the_watch_says_how_often_it_errs_and_calls_where_failures_run_together():
    group = of_all(left_over(*[0] * 20, *[25] * 6, *[0] * 20))
    watch = chart(group, "watch")

    assert re.search(r"calls falsely once in about \d+ cases", watch.says[1])
    assert watch.says[2] == "It called 1 time in 46 cases judged."
    assert "watch_calls" in [each.code for each in group.notices]
    assert "call" in [mark.words for mark in watch.picture.marks if isinstance(mark, Label)]


def test_nobody_seen_leaves_words_instead_of_charts():
    group = of_all(left_over(None, None))

    assert [each.picture for each in group.charts] == [None] * 4
    assert all(each.says for each in group.charts)


def test_no_operation_makes_no_group():
    made = audited([], by="surgeon")

    assert (made.lines, made.groups, made.cases) == ((), (), 0)


def test_operations_without_a_result_are_told():
    (note,) = audited(MANY, untold=3).notices

    assert note.text.startswith("3 operations more are not in these figures")


def test_words_can_be_printed_and_speak_of_no_side_but_the_patient_s():
    made = said("audit", results=MANY, by="all")["answer"]
    words = list(_texts(made))

    assert not lacks("".join(words))
    assert not [each for each in words if re.search(r"\b(left|right)\b (of|hand|side)", each)]


@pytest.mark.parametrize("step", [3, 7, 159])
def test_the_order_in_which_operations_are_told_changes_nothing(step):
    mixed = [MANY[place * step % len(MANY)] for place in range(len(MANY))]

    assert audited(mixed, by="diagnosis") == audited(MANY, by="diagnosis")


def test_a_watch_that_cannot_tell_is_refused():
    (fault,) = said("audit", results=[], failures_expected=0.4, failures_worse=0.4)["faults"]

    assert (fault["code"], fault["field"]) == ("watch_cannot_tell", "failures_worse")


def _texts(value):
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for each in value.values():
            yield from _texts(each)
    elif isinstance(value, list):
        for each in value:
            yield from _texts(each)
