"""What became of operations: seen and missing, by definitions of others, with exact intervals."""

import json
from dataclasses import replace
from random import Random

import pytest
from scipy import stats

from planner.desk import answer
from planner.records.examination import Constancy
from planner.results import Reporting, report_groups
from planner.results.definitions import Verdict, pedig_exotropia_adapted, within_8, within_10
from planner.results.grouping import Grouping
from planner.results.lasting import lasting_of
from planner.results.report import FEW
from planner.results.result import Result, Seen
from planner.results.window import Window

USUAL = Window(first_days=28, last_days=120)
PLAIN = Result(
    id="00000000-0000-7000-8000-000000000000",
    operated_on="2026-01-01",
    surgeon="Ilse Marden",
    family="recess-both-mr",
    table="wright-after-parks",
    diagnosis="esotropia",
    before_pd=30.0,
    expected_pd=0.0,
)


def result(place, *visits, **more):
    """A result with visits as (days after, Δ at distance)."""
    return replace(
        PLAIN,
        id=f"00000000-0000-7000-8000-{place:012x}",
        operated_on=f"2026-01-{place % 28 + 1:02d}",
        seen=tuple(Seen(days_after=days_after, distance_pd=pd) for days_after, pd in visits),
        **more,
    )


def of_all(*results, **more):
    (group,) = report_groups(Reporting(results=results, **more))
    return group.report


def success(report, id_="within-10"):
    return next(each for each in report.successes if each.id == id_)


@pytest.mark.check_value
def test_the_share_of_those_judged_has_the_exact_interval():
    """SciPy's exact interval of 7 in 9."""
    report = of_all(*(result(place, (60, 4 if place < 7 else 20)) for place in range(9)))
    expected = stats.binomtest(7, 9).proportion_ci(method="exact")
    ours = success(report).among_judged

    assert (ours.count, ours.cases) == (7, 9)
    assert (ours.low, ours.high) == pytest.approx((expected.low, expected.high))


def test_who_was_not_seen_is_counted_and_both_extremes_are_told():
    report = of_all(result(0, (60, 2)), result(1, (60, 3)), result(2, (60, 25)), result(3), result(4, (400, 1)))
    told = success(report)

    assert report.cases == 5
    assert (told.among_judged.count, told.among_judged.cases, told.missing) == (2, 3, 2)
    assert (told.if_all_missing_failed.count, told.if_all_missing_failed.cases) == (2, 5)
    assert (told.if_all_missing_succeeded.count, told.if_all_missing_succeeded.cases) == (4, 5)


@pytest.mark.parametrize(
    ("before", "left", "under", "over"), [(30, 14, 1, 0), (30, -14, 0, 1), (-30, -14, 1, 0), (-30, 14, 0, 1)]
)
def test_what_is_left_counts_by_the_direction_operated_for(before, left, under, over):
    report = of_all(result(0, (60, left), before_pd=before))

    assert (report.undercorrected.count, report.overcorrected.count) == (under, over)


@pytest.mark.parametrize(
    ("left", "eight", "ten"), [(8, True, True), (8.5, False, True), (-10, False, True), (10.5, False, False)]
)
def test_the_limits_belong_to_success(left, eight, ten):
    seen = Seen(days_after=60, distance_pd=left)

    assert (within_8.met(seen), within_10.met(seen)) == (eight, ten)


def exotropia(*visits, **more):
    """An intermittent exotropia of 30 Δ and its visits, each as a day and what differs from a straight one."""
    seen = tuple(
        Seen(**({"days_after": day, "distance_pd": 0, "near_pd": 0, "stereo_octaves_lost": 0} | found))
        for day, found in visits
    )
    return replace(PLAIN, **({"before_pd": -30.0, "constancy": Constancy.INTERMITTENT, "seen": seen} | more))


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("distance", "near", "constancy", "octaves", "met"),
    [
        (-9, -9, None, 0, True),
        (-10, -2, None, 0, False),
        (-2, -10, None, 0, False),
        (-12, -12, Constancy.INTERMITTENT, 0, False),
        (-12, -12, Constancy.LATENT, 0, True),
        (6, 0, Constancy.CONSTANT, 0, False),
        (6, 0, Constancy.INTERMITTENT, 0, True),
        (5, 0, Constancy.CONSTANT, 0, True),
        (0, 0, None, 2, False),
        (0, 0, None, 1.9, True),
        (0, None, None, 0, None),
        (0, 0, None, None, None),
        (6, 0, None, 0, None),
        (-12, None, None, None, False),
    ],
)
def test_a_visit_by_the_published_limits_for_intermittent_exotropia(distance, near, constancy, octaves, met):
    """PMC6348023, table 4: XT >= 10 at distance or near, constant ET >= 6, near stereoacuity lost by >= 2 octaves."""
    seen = Seen(days_after=200, distance_pd=distance, near_pd=near, constancy=constancy, stereo_octaves_lost=octaves)

    assert pedig_exotropia_adapted.met(seen) is met


@pytest.mark.check_value
@pytest.mark.parametrize("octaves", [None, 0, 1])
def test_stereoacuity_lost_to_nil_is_suboptimal_however_few_octaves_it_was(octaves):
    """PMC6348023, table 4: from 400 seconds of arc only nil is a loss."""
    lost = {"stereo_octaves_lost": octaves, "stereo_lost_to_nil": True}

    assert pedig_exotropia_adapted.DEFINITION.judge(exotropia((200, lost)), USUAL) is Verdict.FAILED


EXO, UNTOLD = {"distance_pd": -14}, {"stereo_octaves_lost": None}


@pytest.mark.parametrize(
    ("visits", "again", "verdict"),
    [
        ([(60, EXO), (180, {})], None, Verdict.MET),
        ([(180, EXO), (365, {})], None, Verdict.FAILED),
        ([(180, {}), (1400, EXO)], None, Verdict.MET),
        ([(60, {})], None, Verdict.MISSING),
        ([(180, {})], 700, Verdict.REOPERATED),
        ([(60, {})], 90, Verdict.REOPERATED),
        ([(180, {})], 1400, Verdict.MET),
        ([(180, EXO)], 700, Verdict.FAILED),
        ([(180, {}), (365, UNTOLD)], None, Verdict.MET),
        ([(180, UNTOLD)], None, Verdict.CANNOT_TELL),
        ([(180, UNTOLD), (365, EXO)], None, Verdict.FAILED),
    ],
)
def test_it_looks_at_every_visit_of_its_own_time_and_at_another_operation(visits, again, verdict):
    """Any visit from six months on, and another operation at any time: PMC6348023, table 4."""
    result = exotropia(*visits, reoperated_days=again)

    assert pedig_exotropia_adapted.DEFINITION.judge(result, USUAL) is verdict


@pytest.mark.parametrize(
    ("before", "constancy", "counted"),
    [
        (-30, Constancy.INTERMITTENT, 1),
        (-30, Constancy.CONSTANT, 0),
        (-30, Constancy.LATENT, 0),
        (-30, None, 0),
        (30, Constancy.INTERMITTENT, 0),
    ],
)
def test_it_speaks_only_of_an_exotropia_that_is_recorded_as_intermittent(before, constancy, counted):
    report = of_all(exotropia((200, {}), before_pd=before, constancy=constancy))

    assert success(report, "pedig-exotropia-adapted").among_judged.cases == counted
    assert success(report, "pedig-exotropia-adapted").missing == 0


def test_what_was_seen_after_another_operation_is_not_this_ones_result():
    report = of_all(result(0, (40, 20), (60, 0), reoperated_days=50))

    assert report.residual.median == 20
    assert (success(report).among_judged.count, report.reoperated.count) == (0, 1)


@pytest.mark.parametrize(
    ("visits", "again", "missing", "failed"),
    [
        ([(5, 45)], 10, 0, 1),
        ([], 10, 0, 1),
        ([(60, 2)], 120, 0, 1),
        ([(60, 2)], 121, 0, 0),
        ([], 121, 1, 0),
    ],
    ids=["slipped, redone early", "never measured", "straight, redone in time", "straight, redone later", "unseen"],
)
def test_who_is_operated_again_by_the_last_day_failed_by_every_definition_and_is_not_missing(
    visits, again, missing, failed
):
    report = of_all(result(0, *visits, before_pd=-30.0, reoperated_days=again))

    assert report.missing.count == missing
    for each in (success(report), success(report, "within-8")):
        assert (each.reoperated, each.missing) == (failed, missing)
        assert each.among_judged.cases == 1 - missing
        assert each.among_judged.count == 1 - missing - failed
        assert each.if_all_missing_succeeded.count == 1 - failed


def test_the_watch_calls_where_muscles_slip_and_are_operated_again_before_anybody_is_seen():
    slipped = (result(place, (3, 50), (60, 0), reoperated_days=10) for place in range(6))
    (group,) = report_groups(Reporting(results=tuple(slipped)))

    assert len(group.watched.ids) == 6
    assert group.watched.calls


def test_success_lasts_until_a_visit_finds_more_or_somebody_operates_again():
    report = of_all(
        result(0, (60, 2), (200, 25)),
        result(1, (60, 2), (300, 3)),
        result(2, (60, 2), reoperated_days=90),
        result(3, (60, 30)),
    )

    assert [(step.days, step.at_risk, step.failed) for step in report.lasting] == [(30, 3, 1), (140, 2, 1)]


@pytest.mark.parametrize(
    ("visits", "again", "followed"),
    [
        ([(1, 14), (60, 0), (400, 0)], None, (340, False)),
        ([(1, 0), (60, 0)], None, (0, False)),
        ([(1, 0), (60, 14)], None, None),
        ([(1, 0)], None, None),
        ([(60, 0)], 50, None),
        ([(60, 0)], 60, None),
        ([(40, 0), (60, 0)], 50, (10, True)),
        ([(40, 0), (50, 25), (60, 0)], 90, (10, True)),
        ([(400, 0), (760, 12)], None, (360, True)),
    ],
    ids=["early eso that passes", "seen once", "lost before it counts", "seen too early",
         "seen after the next operation", "seen on its day", "ended by it", "lost before it", "first seen late"],
)  # fmt: skip
def test_who_is_followed_enters_at_the_first_visit_that_counts(visits, again, followed):
    found = lasting_of([result(0, *visits, before_pd=-30.0, reoperated_days=again)], first_days=28)

    assert [(each.days, each.failed) for each in found.followed] == ([followed] if followed else [])
    assert len(found.followed) + len(found.outside) == 1


@pytest.mark.check_value
def test_how_long_it_lasts_is_scipy_s_estimate_with_time_from_that_visit():
    """Days from entry to loss and to the last visit, drawn with a fixed seed; SciPy 1.17's product-limit estimate."""
    dice = Random(11)  # noqa: S311 -- drawn to be the same each time
    drawn = [(dice.randint(28, 90), dice.randint(30, 900), dice.randint(30, 900)) for _ in range(80)]
    report = of_all(
        *(
            result(place, (2, 20), (entry, 3), (entry + min(lost, last), 30 if lost <= last else 3))
            for place, (entry, lost, last) in enumerate(drawn)
        )
    )
    data = stats.CensoredData.right_censored(
        [min(lost, last) for _, lost, last in drawn], [lost > last for _, lost, last in drawn]
    )
    expected = stats.ecdf(data).sf

    assert len(report.lasting) > 20
    for step in report.lasting:
        assert step.share == pytest.approx(expected.evaluate(step.days), rel=1e-12)


def test_few_are_said_to_be_few():
    assert of_all(*(result(place, (60, 0)) for place in range(FEW - 1))).few
    assert not of_all(*(result(place, (60, 0)) for place in range(FEW))).few


def test_groups_stand_by_name_with_their_case_mix():
    groups = report_groups(
        Reporting(results=(result(0, surgeon="B"), result(1, surgeon="A"), result(2, surgeon="A")), by=Grouping.SURGEON)
    )

    assert [(group.name, group.report.cases, group.families) for group in groups] == [
        ("A", 2, {"recess-both-mr": 2}),
        ("B", 1, {"recess-both-mr": 1}),
    ]


def test_the_watch_calls_after_a_row_of_failures_and_says_how_often_it_errs():
    (group,) = report_groups(Reporting(results=tuple(result(place, (60, 30)) for place in range(8))))

    assert group.watched.calls
    assert group.watched.run_lengths.false_call_cases > group.watched.run_lengths.true_call_cases > 1


def test_a_watch_that_cannot_tell_is_refused_with_the_field():
    question = {"ask": "results", "results": [], "failures_expected": 0.5, "failures_worse": 0.4}

    (fault,) = json.loads(answer(json.dumps(question)))["faults"]

    assert (fault["code"], fault["field"], fault["allowed"]) == ("watch_cannot_tell", "failures_worse", "more than 0.5")


def test_no_result_is_no_group():
    assert json.loads(answer('{"ask": "results", "results": []}')) == {"answer": []}
