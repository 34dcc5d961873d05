"""Dissociated vertical deviation: dosed by drift, told from a true hyper."""

import pytest

from planner.additions.dissociated.telling import Kind, nature
from planner.anatomy import Eye
from planner.findings import find, target
from planner.measurement import measure
from planner.records.diagnosis import Breaker, Presence, Validity
from planner.situation import Situation
from planner.tables import table
from tests.planner.additions.pieces import additions, graded, levels, work
from tests.planner.patients import case


def situation_of(a_case):
    measurements = measure(a_case.examination)
    answered = target(measurements, a_case.aim)
    return Situation(
        case=a_case,
        table=table(a_case.table),
        measurements=measurements,
        target=answered,
        findings=find(measurements, answered),
    )


@pytest.mark.parametrize(
    ("drift", "mm"),
    [
        # Bae & Choi 2012: 1.82 Δ/mm; 10 / 1.82 = 5.49, 14 / 1.82 = 7.69, 18.2 / 1.82 = 10
        (3.64, 2.0),
        (10, 5.5),
        (14, 7.5),
        (18.2, 10.0),
    ],
)
def test_the_drift_decides_the_recession(drift, mm):
    offered = additions(20, dvd_right_pd=drift, dvd_left_pd=drift)

    assert work(offered["dvd-recess-both-sr"]) == {("right", "SR", "recess"): mm, ("left", "SR", "recess"): mm}
    assert work(offered["dvd-recess-sr-left"]) == {("left", "SR", "recess"): mm}


def test_each_eye_goes_by_its_own_drift():
    offered = additions(20, dvd_right_pd=8.0, dvd_left_pd=12.0)

    assert work(offered["dvd-recess-both-sr"]) == {("right", "SR", "recess"): 4.5, ("left", "SR", "recess"): 6.5}


def test_the_spread_is_the_published_one():
    """1.82 ± 1.51 Δ/mm: 5.5 mm take 10.0 ± 8.3 Δ."""
    (expected,) = additions(20, dvd_right_pd=10.0)["dvd-recess-sr-right"].expected

    assert (expected.before, expected.correction, expected.spread) == (10, 10.0, 8.3)
    assert expected.eye is Eye.RIGHT


@pytest.mark.parametrize(("drift", "level"), [(14, None), (18.2, "caution")])
def test_up_to_ten_millimetres_are_taught_for_it(drift, level):
    """SR recession for a dissociated deviation: 8 usual, 10 the widest (from memory, verify)."""
    option = additions(20, dvd_right_pd=drift)["dvd-recess-sr-right"]

    assert levels(option).get("above_usual_maximum-right-sr") == level
    assert "stop" not in levels(option).values()


def test_more_than_ten_millimetres_are_not_given():
    option = additions(20, dvd_right_pd=19.2)["dvd-recess-sr-right"]

    assert option.doses == ()
    assert levels(option)["beyond_widest_maximum-right-sr"] == "stop"


@pytest.mark.parametrize("drift", [None, 0, 3])
def test_less_than_the_least_useful_recession_is_not_offered(drift):
    assert not any(id_.startswith("dvd") for id_ in additions(20, dvd_right_pd=drift))


def test_overacting_inferior_obliques_may_be_brought_forward_but_no_effect_is_promised():
    versions = (graded("right", "IO", 2), graded("left", "IO", 1))
    option = additions(20, dvd_right_pd=8.0, dvd_left_pd=8.0, versions=versions)["dvd-anteriorise-both-io"]

    assert work(option) == {("right", "IO", "anteriorise"): None, ("left", "IO", "anteriorise"): None}
    assert [each.correction for each in option.expected] == [None, None]


@pytest.mark.parametrize(
    ("examined", "hyper", "kind"),
    [
        ({}, 10, Kind.TRUE),
        ({"dvd_right_pd": 0.0, "dvd_left_pd": 0.0}, 10, Kind.TRUE),
        ({"dvd_right_pd": 6.0, "dvd_left_pd": 6.0}, 10, Kind.MIXED),
        ({"dvd_right_pd": 10.0}, 10, Kind.UNCERTAIN),
        ({"dvd_right_pd": 14.0, "dvd_left_pd": 4.0}, 10, Kind.UNCERTAIN),
        ({"dvd_left_pd": 8.0}, 10, Kind.UNCERTAIN),
        ({"conditions": (Validity(breaker=Breaker.DISSOCIATED, presence=Presence.PRESENT),)}, 10, Kind.UNCERTAIN),
        ({"conditions": (Validity(breaker=Breaker.DISSOCIATED, presence=Presence.ABSENT),)}, 10, Kind.TRUE),
    ],
    ids=["nothing", "no drift", "larger than drift", "as drift", "less than drift", "other eye", "noted", "excluded"],
)
def test_a_hyper_is_true_in_part_or_not_to_be_told(examined, hyper, kind):
    """Common practice: a true hyper goes with an eye that moves down under cover, which the drift does not tell."""
    found = nature(situation_of(case(20, **examined)), Eye.RIGHT, hyper)

    assert found.kind is kind
    assert bool(found.notices) is (kind is not Kind.TRUE)


def test_an_operation_on_a_hyper_that_may_be_dissociated_is_cautioned():
    option = additions(20, vertical_pd=10, dvd_right_pd=10.0)["recess-sr-right"]

    assert levels(option)["hyper_may_be_dissociated"] == "caution"
