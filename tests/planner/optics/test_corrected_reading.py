"""From a raw reading to the corrected value, explained step by step."""

import dataclasses

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from planner.errors import Refused
from planner.optics import Arrangement, Held, Material, Technique, correct
from planner.provenance import Mark
from planner.values.statement import Level

ORDINARY = Technique()
SPLIT, STACKED = Arrangement.SPLIT, Arrangement.STACKED

FIGURES = [
    pytest.param(40, Technique(material=Material.GLASS, held=Held.FRONTAL), 32.3, id="glass-frontal-thompson-guyton"),
    pytest.param(
        45,
        Technique(material=Material.GLASS, held=Held.PRENTICE, arrangement=STACKED, second_pd=5),
        58.5,
        id="glass-stacked-thompson-guyton",
    ),
    pytest.param(40, Technique(arrangement=SPLIT, second_pd=20), 41.7, id="split-20-20-tangent-sum"),
    pytest.param(60, Technique(arrangement=SPLIT, second_pd=30), 65.9, id="split-30-30-tangent-sum"),
    pytest.param(80, Technique(arrangement=SPLIT, second_pd=40), 95.2, id="split-40-40-tangent-sum"),
    pytest.param(100, Technique(arrangement=SPLIT, second_pd=50), 133.3, id="split-50-50-tangent-sum"),
    pytest.param(40, Technique(spectacles_d=-10), 32.0, id="through-minus-10"),
    pytest.param(40, Technique(spectacles_d=10), 53.3, id="through-plus-10"),
    pytest.param(62, Technique(prism_from_cornea_mm=40), 49.9, id="near-4-cm-thompson-guyton-1985"),
]


@pytest.mark.parametrize(("raw_pd", "technique", "corrected_pd"), FIGURES)
def test_known_figures(raw_pd, technique, corrected_pd):
    corrected = correct(raw_pd, technique)

    assert corrected.corrected_pd == corrected_pd
    assert corrected.raw_pd == raw_pd
    assert corrected.steps


def test_steps_follow_one_another_in_the_order_of_the_light():
    technique = Technique(
        material=Material.GLASS, arrangement=SPLIT, second_pd=20, prism_from_cornea_mm=20, spectacles_d=-8
    )
    codes = [step.code for step in correct(40, technique).steps]

    assert codes == [
        "prism_held",
        "prism_held",
        "prism_away_at_near",
        "prism_away_at_near",
        "prisms_split",
        "through_spectacles",
    ]


def test_every_step_names_its_source():
    technique = Technique(
        material=Material.GLASS, arrangement=STACKED, second_pd=5, prism_from_cornea_mm=20, spectacles_d=3
    )
    marks = [step.provenance.mark for step in correct(25, technique).steps]

    assert marks == [Mark.COMPUTED, Mark.COMPUTED, Mark.FROM_MEMORY]


def test_stacked_prisms_carry_a_caution():
    [notice] = correct(30, Technique(arrangement=STACKED, second_pd=5)).notices

    assert (notice.level, notice.code) == (Level.CAUTION, "stacked_in_one_direction")


@pytest.mark.parametrize(
    ("raw_pd", "technique", "code", "field"),
    [
        pytest.param(
            100, Technique(arrangement=STACKED, second_pd=50), "total_internal_reflection", "second_pd", id="tir"
        ),
        pytest.param(
            45,
            Technique(held=Held.PRENTICE),
            "total_internal_reflection",
            "held",
            id="tir-of-one-acrylic-held-prentice",
        ),
        pytest.param(200, Technique(arrangement=SPLIT, second_pd=100), "beyond_right_angle", "", id="a-right-angle"),
        pytest.param(120, Technique(arrangement=SPLIT, second_pd=60), "beyond_measurable", "raw_pd", id="split-60-60"),
        pytest.param(40, Technique(second_pd=10), "second_prism", "second_pd", id="one-prism-and-a-second"),
        pytest.param(40, Technique(arrangement=SPLIT), "second_prism", "second_pd", id="split-without-a-second"),
        pytest.param(40, Technique(arrangement=SPLIT, second_pd=40), "second_prism", "second_pd", id="second-is-all"),
        pytest.param(120, ORDINARY, "out_of_range", "raw_pd", id="no-such-prism"),
        pytest.param(40, Technique(spectacles_d=-25), "out_of_range", "spectacles_d", id="beyond-the-rule"),
        pytest.param(
            40, Technique(prism_from_cornea_mm=-1), "out_of_range", "prism_from_cornea_mm", id="inside-the-eye"
        ),
        pytest.param(40, Technique(target_from_cornea_mm=6000), "out_of_range", "target_from_cornea_mm", id="not-near"),
        pytest.param(40, Technique(spectacles_d=float("nan")), "out_of_range", "spectacles_d", id="not-a-number"),
    ],
)
def test_what_cannot_be_is_refused_with_what_would_be_allowed(raw_pd, technique, code, field):
    with pytest.raises(Refused) as refusal:
        correct(raw_pd, technique)

    fault = refusal.value.faults[0]
    assert (fault.code, fault.field) == (code, field)
    assert fault.allowed


@st.composite
def techniques(draw):
    return Technique(
        material=draw(st.sampled_from(Material)),
        held=draw(st.sampled_from(Held)),
        prism_from_cornea_mm=draw(st.none() | st.floats(0, 60)),
        spectacles_d=draw(st.none() | st.floats(-12, 12)),
    )


@given(st.floats(-100, 100))
def test_an_ordinary_reading_stays_as_it_was_read(raw_pd):
    corrected = correct(raw_pd, ORDINARY)

    assert (corrected.corrected_pd, corrected.steps, corrected.notices) == (raw_pd, (), ())


@given(st.integers(-40, 40), techniques(), st.sampled_from(Arrangement), st.integers(1, 10))
def test_the_mirrored_reading_is_corrected_to_the_mirror(raw_pd, technique, arrangement, second_pd):
    if arrangement is not Arrangement.ONE:
        assume(abs(raw_pd) > second_pd)
        technique = dataclasses.replace(technique, arrangement=arrangement, second_pd=second_pd)

    assert mirror(outcome(-raw_pd, technique)) == outcome(raw_pd, technique)


def outcome(raw_pd, technique):
    """The corrected value, or the codes of the refusal."""
    try:
        return correct(raw_pd, technique).corrected_pd
    except Refused as refusal:
        return tuple(fault.code for fault in refusal.faults)


def mirror(result):
    return result if isinstance(result, tuple) else -result


@given(st.integers(0, 30), st.integers(1, 10), techniques())
def test_a_larger_reading_never_means_a_smaller_deviation(raw_pd, more_pd, technique):
    larger = correct(raw_pd + more_pd, technique).corrected_pd

    assert larger > correct(raw_pd, technique).corrected_pd


@given(st.integers(2, 80), st.data())
def test_it_does_not_matter_which_eye_has_which_prism(raw_pd, data):
    second_pd = data.draw(st.integers(1, raw_pd - 1))
    one = correct(raw_pd, Technique(arrangement=SPLIT, second_pd=second_pd))
    other = correct(raw_pd, Technique(arrangement=SPLIT, second_pd=raw_pd - second_pd))

    assert one.corrected_pd == other.corrected_pd
