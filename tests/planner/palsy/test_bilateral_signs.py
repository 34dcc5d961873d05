"""Signs that a superior oblique palsy is on both sides."""

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.palsy import BilateralEvidence, SignName, Suspicion, bilateral_signs
from planner.precision import Strength
from planner.provenance import Mark

CLEAR, BORDERLINE, CANNOT_TELL = Strength


def only_sign(**measured):
    [sign] = bilateral_signs(BilateralEvidence(**measured)).signs
    return sign


V_PATTERNS = [
    pytest.param(-15, 25, True, CLEAR, id="v-40-clear"),
    pytest.param(-5, 22, True, BORDERLINE, id="v-27-borderline"),
    pytest.param(-5, 20, False, BORDERLINE, id="v-25-is-not-in-excess-of-25"),
    pytest.param(0, 8, False, CLEAR, id="v-8-clear"),
    pytest.param(25, -15, False, CLEAR, id="a-pattern"),
]


@pytest.mark.parametrize(("up_pd", "down_pd", "present", "strength"), V_PATTERNS)
def test_a_v_pattern_in_excess_of_25(up_pd, down_pd, present, strength):
    """Sydnor, Seaber & Buckley, Ophthalmology 1982;89:134-8, abstract: in excess of 25 Δ."""
    sign = only_sign(up_horizontal_pd=up_pd, down_horizontal_pd=down_pd)

    assert (sign.name, sign.present, sign.strength) == (SignName.V_PATTERN, present, strength)


TORSIONS = [
    pytest.param(12, None, True, BORDERLINE, id="12-deg-over-10-sydnor-1982"),
    pytest.param(10, None, False, BORDERLINE, id="10-deg-not-over-10-sydnor-1982"),
    pytest.param(8, 22, True, CLEAR, id="22-deg-down-over-the-tested-cut-off-jpos-1993"),
    pytest.param(8, 20, True, BORDERLINE, id="20-deg-down-not-over-the-cut-off-jpos-1993"),
]


@pytest.mark.parametrize(("ahead_deg", "down_deg", "present", "strength"), TORSIONS)
def test_excyclotorsion_over_10_degrees(ahead_deg, down_deg, present, strength):
    """Sydnor et al. 1982: over 10 degrees; J Pediatr Ophthalmol Strabismus 1993;30:361-7: cut-off 20 in down-gaze."""
    sign = only_sign(excyclotorsion_deg=ahead_deg, excyclotorsion_down_deg=down_deg)

    assert (sign.present, sign.strength) == (present, strength)


TILTS = [
    pytest.param(8, -7, True, CLEAR, id="right-hyper-on-right-tilt-left-on-left"),
    pytest.param(8, -3, True, BORDERLINE, id="one-side-within-error"),
    pytest.param(8, -1, False, CANNOT_TELL, id="one-side-cannot-be-told"),
    pytest.param(-8, 7, False, CLEAR, id="the-wrong-way-round"),
    pytest.param(14, 6, False, CLEAR, id="one-sided"),
]


@pytest.mark.parametrize(("right_pd", "left_pd", "present", "strength"), TILTS)
def test_hyper_that_alternates_with_the_head_tilt(right_pd, left_pd, present, strength):
    sign = only_sign(tilt_right_vertical_pd=right_pd, tilt_left_vertical_pd=left_pd)

    assert (sign.name, sign.present, sign.strength) == (SignName.ALTERNATES_ON_TILT, present, strength)
    assert sign.statement.provenance.mark is Mark.FROM_MEMORY


def test_hyper_that_alternates_with_side_gaze():
    """Sydnor et al. 1982: hypertropia that alternated on right and left gaze; right hyper in left gaze (adduction)."""
    sign = only_sign(right_vertical_pd=-8, left_vertical_pd=9)

    assert (sign.name, sign.present, sign.strength) == (SignName.ALTERNATES_IN_GAZE, True, CLEAR)
    assert sign.statement.provenance.mark is Mark.PUBLISHED


def test_a_small_hyper_hints_at_a_masked_palsy():
    """Dotan et al., J Pediatr Ophthalmol Strabismus 2014;51:333-6: below 5 Δ."""
    assert only_sign(primary_vertical_pd=4).present
    assert not only_sign(primary_vertical_pd=5).present


def test_one_clear_sign_makes_a_suspicion():
    evidence = BilateralEvidence(tilt_right_vertical_pd=8, tilt_left_vertical_pd=-8)

    assert bilateral_signs(evidence).suspicion is Suspicion.SUSPECTED


def test_one_weak_sign_makes_it_possible():
    assert bilateral_signs(BilateralEvidence(excyclotorsion_deg=12)).suspicion is Suspicion.POSSIBLE


def test_two_weak_signs_make_a_suspicion():
    evidence = BilateralEvidence(excyclotorsion_deg=12, primary_vertical_pd=3)

    assert bilateral_signs(evidence).suspicion is Suspicion.SUSPECTED


def test_no_sign_does_not_exclude_it():
    """J Pediatr Ophthalmol Strabismus 1986;23:264-72: 8 of 92 were masked."""
    result = bilateral_signs(BilateralEvidence(excyclotorsion_deg=3))

    assert result.suspicion is Suspicion.NO_SIGN
    assert "No sign excludes it" in result.statement.text
    assert (result.statement.facts["masked"], result.statement.facts["masked_of"]) == (8, 92)


def test_what_was_not_measured_is_asked_for():
    result = bilateral_signs(BilateralEvidence())

    assert result.suspicion is Suspicion.NOT_TESTED
    assert len(result.settle) == len(SignName)


SIZE = st.none() | st.integers(-40, 40)
EVIDENCE = st.builds(
    BilateralEvidence,
    up_horizontal_pd=SIZE,
    down_horizontal_pd=SIZE,
    excyclotorsion_deg=st.none() | st.integers(-5, 25),
    excyclotorsion_down_deg=st.none() | st.integers(-5, 30),
    primary_vertical_pd=SIZE,
    right_vertical_pd=SIZE,
    left_vertical_pd=SIZE,
    tilt_right_vertical_pd=SIZE,
    tilt_left_vertical_pd=SIZE,
)


@given(EVIDENCE)
def test_the_mirrored_patient_has_the_same_signs(evidence):
    mirrored = dataclasses.replace(
        evidence,
        primary_vertical_pd=mirror(evidence.primary_vertical_pd),
        right_vertical_pd=mirror(evidence.left_vertical_pd),
        left_vertical_pd=mirror(evidence.right_vertical_pd),
        tilt_right_vertical_pd=mirror(evidence.tilt_left_vertical_pd),
        tilt_left_vertical_pd=mirror(evidence.tilt_right_vertical_pd),
    )
    one, other = bilateral_signs(evidence), bilateral_signs(mirrored)

    assert other.suspicion is one.suspicion
    assert [(sign.name, sign.present, sign.strength) for sign in other.signs] == [
        (sign.name, sign.present, sign.strength) for sign in one.signs
    ]


def mirror(vertical_pd):
    return None if vertical_pd is None else -vertical_pd
