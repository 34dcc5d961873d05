"""Notes that inform and change no dose, and the eye that a sensory deviation is kept to."""

import pytest

from planner.age import age_years
from planner.anatomy import Eye
from planner.records.diagnosis import Diagnosed, Diagnosis
from planner.rules.axial_length import effect_pd_per_mm
from tests.planner.patients import codes, doses, options, reading


def found(option, code):
    return next((notice for notice in option.notices if notice.code == code), None)


@pytest.mark.check_value
@pytest.mark.parametrize(("length", "per_mm"), [(20, 3.71), (22, 3.13), (24, 2.55), (26, 1.97)])
def test_the_effect_by_axial_length_is_that_of_the_formula(length, per_mm):
    """Woo 1997: Δ/mm = 9.51 - 0.29 x axial length, worked out by hand."""
    assert round(effect_pd_per_mm(length), 2) == per_mm


def test_axial_lengths_are_told_for_operated_eyes_in_esodeviations_and_change_nothing():
    lengths = {"axial_length_right_mm": 22.0, "axial_length_left_mm": 20.0}
    told, plain = options(40, **lengths), options(40)

    for name, option in told.items():
        assert doses(option) == doses(plain[name])
    assert found(told["recess-mr-resect-lr-left"], "axial_length-left").facts["pd_per_mm"] == 3.71
    assert found(told["recess-mr-resect-lr-left"], "axial_length-right") is None
    assert "axial_length-right" not in codes(options(-40, **lengths)["recess-both-lr"].notices)


@pytest.mark.parametrize(
    ("born", "on", "years"),
    [
        ("2008-11-02", "2026-11-02", 18),
        ("2008-11-03", "2026-11-02", 17),
        ("2024-02-29", "2026-02-28", 1),
        ("2026-11-02", "2026-11-02", 0),
    ],
)
def test_ages_are_completed_years(born, on, years):
    assert age_years(born, on) == years


@pytest.mark.check_value
@pytest.mark.parametrize(("born", "per_mm", "effect"), [("2008-11-03", 2.82, 38.1), ("2008-11-02", 3.02, 40.8)])
def test_children_and_adults_have_their_published_dose_response(born, per_mm, effect):
    """Lai et al. 2025. Wright, XT 40: LR 7.5 and MR 6.0, 13.5 mm in all."""
    note = found(options(-40, born_on=born)["recess-lr-resect-mr-left"], "age_and_effect")

    assert (note.facts["pd_per_mm"], note.facts["effect_pd"], note.level) == (per_mm, effect, "note")


def test_the_age_is_told_of_one_eye_surgery_for_exodeviations_alone():
    assert found(options(-40, born_on="2001-01-01")["recess-both-lr"], "age_and_effect") is None
    assert found(options(40, born_on="2001-01-01")["recess-mr-resect-lr-left"], "age_and_effect") is None
    assert found(options(-40)["recess-lr-resect-mr-left"], "age_and_effect") is None


@pytest.mark.parametrize("eye", ["right", "left"])
def test_of_three_muscles_the_eye_with_two_gets_the_adjustable_suture(eye):
    """Wright, three muscles."""
    note = found(options(60)[f"recess-both-mr-resect-lr-{eye}"], "adjustable_suture")

    assert (note.facts, note.level) == ({"eye": eye}, "note")
    assert found(options(60)["recess-both-mr"], "adjustable_suture") is None


@pytest.mark.parametrize(("near", "speaks"), [(-39.9, False), (-40, True), (-20, False)])
def test_an_exodeviation_larger_at_near_leans_one_eye_surgery_to_the_medial_rectus_without_a_figure(near, speaks):
    offered = options(-30, reading(near, at="near"))
    note = found(offered["recess-lr-resect-mr-left"], "convergence_bias")

    assert (note is not None) is speaks
    if speaks:
        assert note.provenance.mark == "common practice"
        assert doses(offered["recess-lr-resect-mr-left"]) == doses(options(-30)["recess-lr-resect-mr-left"])
    assert found(offered["resect-both-mr"], "convergence_bias") is None


@pytest.mark.parametrize("eye", [Eye.RIGHT, Eye.LEFT])
def test_a_sensory_deviation_is_kept_to_its_eye_without_an_acuity_too(eye):
    diagnosed = (Diagnosed(diagnosis=Diagnosis.SENSORY_DEVIATION, eye=eye),)
    offered = options(-40, diagnoses=diagnosed)
    own, other = (offered[f"recess-lr-resect-mr-{each}"] for each in (eye, eye.other))

    assert next(iter(offered)) == own.id
    assert "poorer_eye" in codes(own.reasons_for)
    assert "sensory_other_eye" not in codes(own.notices)
    assert found(other, "sensory_other_eye").level == "caution"
    assert found(offered["recess-both-lr"], "sensory_other_eye").level == "caution"


def test_a_sensory_deviation_of_no_eye_in_particular_says_nothing():
    offered = options(-40, diagnoses=(Diagnosed(diagnosis=Diagnosis.SENSORY_DEVIATION),))

    assert not any("sensory_other_eye" in codes(option.notices) for option in offered.values())
