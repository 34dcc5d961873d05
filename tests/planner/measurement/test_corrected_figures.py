"""A reading is corrected for its prisms and spectacles, told with its raw figure, or refused where it cannot be."""

import pytest

from planner.errors import Refused
from planner.records.examination import Correction, Gaze, Range
from tests.planner.examined import aimed, measured, straight

DISTANCE = (Gaze.PRIMARY, Range.DISTANCE, Correction.WITH)
NEAR = (Gaze.PRIMARY, Range.NEAR, Correction.WITH)


def prisms(material="acrylic", held="frontal", second=None, arrangement="split", **rest):
    given = {"material": material, "held": held, **rest}
    return given if second is None else {**given, "arrangement": arrangement, "horizontal_second_pd": second}


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("raw", "technique", "true", "within"),
    [
        # Thompson & Guyton, Ophthalmology 1983;90:204-10, as printed: 32 and 59
        pytest.param(40, prisms("glass", "frontal"), 32, 0.5, id="thompson-guyton-glass-held-frontal"),
        pytest.param(
            45,
            prisms("glass", "prentice", second=5, arrangement="stacked"),
            59,
            0.6,
            id="thompson-guyton-glass-stacked",
        ),
        # each as it is labelled: nothing to correct, Thompson & Guyton 1983
        pytest.param(40, prisms("glass", "prentice"), 40, 0, id="glass-as-labelled"),
        pytest.param(40, prisms("acrylic", "frontal"), 40, 0, id="acrylic-as-labelled"),
        # (p + q) / (1 - p q / 10,000)
        pytest.param(40, prisms(second=20), 41.7, 0.05, id="tangents-20-and-20"),
        pytest.param(60, prisms(second=30), 65.9, 0.05, id="tangents-30-and-30"),
        pytest.param(80, prisms(second=40), 95.2, 0.05, id="tangents-40-and-40"),
        pytest.param(100, prisms(second=50), 133.3, 0.05, id="tangents-50-and-50"),
        pytest.param(-60, prisms(second=30), -65.9, 0.05, id="tangents-30-and-30-exo"),
    ],
)
def test_prisms_are_corrected_for_the_way_they_were_held(raw, technique, true, within):
    figure = measured(straight(raw, technique=technique)).horizontal(*DISTANCE)

    assert figure.value_pd == pytest.approx(true, abs=within)
    assert figure.raw_pd == raw
    assert bool(figure.steps) == (figure.value_pd != raw)


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("right", "left", "true"),
    [
        # read = true x (1 - 0.025 F), from memory; the direction is published, Am J Ophthalmol 1983;96:439-48
        pytest.param(-10, -10, 32.0, id="minus-10-reads-more"),
        pytest.param(10, 10, 53.3, id="plus-10-reads-less"),
        pytest.param(-12, -8, 32.0, id="the-mean-of-both-lenses"),
        pytest.param(0, 0, 40.0, id="no-power"),
        pytest.param(-10, None, 40.0, id="one-lens-not-known"),
        pytest.param(None, None, 40.0, id="lenses-not-known"),
    ],
)
def test_spectacles_are_corrected_for_where_both_lenses_are_known(right, left, true):
    lenses = {"spectacles_right_d": right, "spectacles_left_d": left}

    assert measured(straight(40), **lenses).horizontal(*DISTANCE).value_pd == true


def test_a_reading_without_correction_went_through_no_spectacles():
    without = straight(40, correction="without")
    figures = measured(without, spectacles_right_d=-10, spectacles_left_d=-10)

    assert figures.horizontal(Gaze.PRIMARY, Range.DISTANCE, Correction.WITHOUT).value_pd == 40


def test_a_lens_that_is_not_known_is_said():
    notices = aimed(straight(40), spectacles_left_d=-10).notices

    assert [(notice.code, notice.level) for notice in notices] == [("one_lens_not_known", "note")]


@pytest.mark.check_value
def test_what_a_prism_away_from_the_cornea_does_at_near_is_told_and_changes_nothing():
    """Thompson & Guyton, Ophthalmology 1985;92:684-90: 50 Δ at 33 cm read 62 Δ with the prism at 4 cm."""
    near = straight(62, at="near", technique=prisms(prism_from_cornea_mm=40))
    figure = measured(straight(40), near).horizontal(*NEAR)

    assert (figure.value_pd, figure.raw_pd) == (62, 62)
    assert [aside.facts["eye_pd"] for aside in figure.asides] == [pytest.approx(50, abs=0.5)]


def test_at_distance_the_place_of_the_prism_does_not_matter():
    figure = measured(straight(40, technique=prisms(prism_from_cornea_mm=40))).horizontal(*DISTANCE)

    assert (figure.value_pd, figure.asides) == (40, ())


def test_each_direction_is_corrected_for_its_own_second_prism():
    both = straight(60, 40, technique=prisms(second=30, vertical_second_pd=20))
    one = straight(60, 20, technique=prisms(second=30))

    assert measured(both).vertical(*DISTANCE).value_pd == 41.7
    assert measured(one).vertical(*DISTANCE).value_pd == 20


def test_a_light_reflex_uses_no_prisms_and_is_rough():
    guess = straight(-45, method="light reflex", technique=prisms("glass", "frontal"))

    assert measured(guess).horizontal(*DISTANCE).value_pd == -45
    assert [notice.code for notice in aimed(guess).notices] == ["reflex_is_rough"]


def faults_of(*readings, **rest):
    with pytest.raises(Refused) as caught:
        measured(*readings, **rest)
    return [(fault.code, fault.field) for fault in caught.value.faults]


@pytest.mark.parametrize(
    ("reading", "code", "field"),
    [
        pytest.param(
            straight(140, technique=prisms("glass", "prentice", second=60, arrangement="stacked")),
            "total_internal_reflection",
            "technique.horizontal_second_pd",
            id="no-light-through-80-and-60-of-glass",
        ),
        pytest.param(
            straight(40, technique=prisms(second=40)),
            "second_prism",
            "technique.horizontal_second_pd",
            id="the-second-prism-is-the-whole",
        ),
        pytest.param(
            straight(40, technique={"arrangement": "split"}),
            "second_prism",
            "technique.horizontal_second_pd",
            id="two-prisms-and-no-second",
        ),
        pytest.param(straight(120, technique=prisms()), "out_of_range", "horizontal_pd", id="no-prism-of-120"),
        pytest.param(
            straight(120, technique=prisms(second=60)), "beyond_measurable", "horizontal_pd", id="60-and-60-are-187"
        ),
    ],
)
def test_a_reading_that_cannot_be_is_refused_and_named(reading, code, field):
    assert faults_of(straight(20, correction="without"), reading) == [(code, f"examination.readings.1.{field}")]


def test_all_impossible_readings_are_told_at_once():
    impossible = prisms(second=40)
    found = faults_of(straight(40, technique=impossible), straight(30, 5, at="near", technique=impossible))

    assert [field for _, field in found] == [
        "examination.readings.0.technique.horizontal_second_pd",
        "examination.readings.1.technique.horizontal_second_pd",
    ]
