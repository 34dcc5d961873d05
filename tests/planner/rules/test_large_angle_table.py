"""The large-angle table goes beyond the conventional maxima, so far and no further, and for its own patients."""

import pytest

from tests.planner.patients import change, codes, options

TABLE = {"table": "large-angle-two-muscles"}
LEFT = {"acuity_right": "6/6", "acuity_left": "6/60"}


def levels(option):
    return {notice.code: notice.level.value for notice in option.notices}


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("angle", "option", "muscle", "conventional_mm", "own_mm"),
    [
        (75, "recess-mr-resect-lr-left", "MR", 7, 8.5),
        (75, "recess-mr-resect-lr-left", "LR", 10, 10.5),
        (-75, "recess-lr-resect-mr-left", "LR", 10, 12.5),
    ],
)
def test_beyond_the_conventional_maximum_is_a_caution_up_to_the_tables_own_and_a_stop_above(
    angle, option, muscle, conventional_mm, own_mm
):
    for mm, expected in (
        (conventional_mm, None),
        (conventional_mm + 0.5, "beyond_conventional_maximum"),
        (own_mm, "beyond_conventional_maximum"),
        (own_mm + 0.5, "above_widest_maximum"),
    ):
        offered = options(angle, changes=[change(option, "left", muscle, mm)], **TABLE, **LEFT)[option]
        found = levels(offered)
        for code, level in (("beyond_conventional_maximum", "caution"), ("above_widest_maximum", "stop")):
            assert found.get(f"{code}-left-{muscle.lower()}") == (level if code == expected else None)


def test_the_medial_resection_has_no_maximum_of_its_own():
    """Print goes to 8 mm, which is the conventional maximum."""
    option = "recess-lr-resect-mr-left"
    offered = options(-75, changes=[change(option, "left", "MR", 8.5)], **TABLE, **LEFT)[option]

    assert levels(offered)["above_widest_maximum-left-mr"] == "stop"


@pytest.mark.parametrize("angle", [60, 65, 80, 100, -60, -75, -100])
def test_every_printed_dose_can_be_planned(angle):
    for option in options(angle, **TABLE, **LEFT).values():
        if option.doses:
            assert "stop" not in levels(option).values()


@pytest.mark.parametrize(
    ("acuities", "right", "left"),
    [
        (LEFT, True, False),
        ({"acuity_right": "6/60", "acuity_left": "6/6"}, False, True),
        ({"acuity_right": "6/6", "acuity_left": "6/6"}, True, True),
        ({}, True, True),
    ],
)
def test_one_eye_surgery_is_meant_for_the_eye_that_sees_less(acuities, right, left):
    offered = options(70, **TABLE, **acuities)

    for eye, expected in (("right", right), ("left", left)):
        found = codes(offered[f"recess-mr-resect-lr-{eye}"].notices)
        assert ("meant_for_the_poorer_eye" in found) is expected
    assert "meant_for_the_poorer_eye" not in codes(offered["recess-both-mr"].notices)


@pytest.mark.parametrize(("angle", "speaks"), [(60, True), (64.9, True), (65, False), (-60, False)])
def test_a_smaller_angle_than_its_patients_had_is_a_caution(angle, speaks):
    """PMC7265262: esotropia from 65, exotropia from 60 Δ."""
    option = "recess-both-mr" if angle > 0 else "recess-both-lr"

    assert ("below_the_sources_patients" in codes(options(angle, **TABLE)[option].notices)) is speaks


def test_its_success_is_a_reason_for_or_against():
    """Esotropia 50 % within 10 Δ, exotropia 79.5 % within 15 Δ."""
    eso, exo = options(70, **TABLE)["recess-both-mr"], options(-70, **TABLE)["recess-both-lr"]
    (against,) = [reason for reason in eso.reasons_against if reason.code == "outcome_of_the_source"]
    (speaks,) = [reason for reason in exo.reasons_for if reason.code == "outcome_of_the_source"]

    assert against.facts == {"success_percent": 50, "within_pd": 10}
    assert speaks.facts == {"success_percent": 79.5, "within_pd": 15}


@pytest.mark.parametrize(
    "option",
    ["recess-both-mr-resect-lr-left", "recess-both-mr-resect-both-lr"],
)
def test_nothing_is_derived_from_it_for_other_numbers_of_muscles(option):
    offered = options(90, **TABLE)[option]

    assert (offered.doses, codes(offered.notices)) == ((), ["not_derived"])


def test_it_has_no_column_for_resecting_both():
    assert codes(options(70, **TABLE)["resect-both-lr"].notices) == ["no_column"]


@pytest.mark.parametrize(("angle", "code"), [(59.9, "below_table"), (110.1, "beyond_table")])
def test_below_its_first_band_and_far_above_its_last_there_is_no_dose(angle, code):
    assert codes(options(angle, **TABLE)["recess-both-mr"].notices) == [code]


def test_a_little_above_the_last_band_its_dose_stands_in_with_a_caution():
    offered = options(110, **TABLE)["recess-both-mr"]

    assert {dose.mm for dose in offered.doses} == {8.5}
    assert "last_row_used" in codes(offered.notices)
    assert offered.expected_residual_pd == 10


def test_between_two_bands_the_lower_holds():
    offered = options(69.6, **TABLE)["recess-both-mr"]

    assert {dose.mm for dose in offered.doses} == {7.0}
    assert "between_bands" in codes(offered.doses[0].steps)
    assert offered.expected_residual_pd == 0.6
