"""The options answer the primary position at distance, with correction where it was measured so."""

import pytest

from planner.errors import Refused
from planner.findings import target
from planner.measurement import measure
from planner.records.examination import Examination
from planner.values.statement import Level
from tests.planner.patients import reading


def examined(*readings, **rest):
    return measure(Examination(examined_on="2026-11-02", readings=readings, **rest))


def refused(*readings):
    with pytest.raises(Refused) as caught:
        target(examined(*readings))
    (fault,) = caught.value.faults
    return fault


def test_the_reading_with_correction_is_preferred():
    without, with_it = reading(50, correction="without"), reading(40)

    assert target(examined(without, with_it)).reading == with_it
    assert target(examined(without, with_it)).horizontal_pd == 40


def test_the_reading_without_correction_serves_where_it_is_the_only_one():
    without = reading(-25, correction="without")

    assert target(examined(without)).reading == without


def test_a_corrected_reading_with_a_vertical_figure_only_does_not_hide_the_horizontal_one():
    without = reading(30, correction="without")

    assert target(examined(reading(None, 5), without)).reading == without


def test_without_the_primary_distance_reading_there_is_nothing_to_plan_from():
    assert refused(reading(40, at="near"), reading(40, gaze="up")).code == "no_primary_distance"


def test_eyes_that_are_straight_with_correction_are_not_operated_for_the_rest():
    fault = refused(reading(0), reading(30, correction="without"))

    assert fault.code == "no_horizontal_deviation"
    assert fault.field == "examination.readings"


def test_a_vertical_figure_alone_is_a_target_without_a_horizontal_part():
    answered = target(examined(reading(None, 8)))

    assert (answered.horizontal_pd, answered.vertical_pd) == (0, 8)
    assert [(notice.level, notice.code) for notice in answered.notices] == [(Level.CAUTION, "horizontal_not_measured")]


def test_a_vertical_figure_of_zero_alone_is_nothing_to_answer():
    assert refused(reading(None, 0)).code == "no_horizontal_deviation"
