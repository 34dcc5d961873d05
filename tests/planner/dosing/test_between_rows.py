"""Between rows the engine interpolates, rounds to half millimetres, and knows what the rounding leaves."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.dosing.effect import Basis, effect_of
from planner.dosing.rounding import to_half_mm
from planner.dosing.rows import amount_at
from planner.tables import tables
from tests.planner.patients import codes, doses, options

COLUMNS = [
    pytest.param(column, id=f"{table.stamp.id}, {column.heading}")
    for table in tables()
    for column in table.columns.values()
]
LINES = [each for each in COLUMNS if not each.values[0].is_banded]
BANDS = [each for each in COLUMNS if each.values[0].is_banded]


def points(column):
    return zip(*((row.first_pd, row.mm) for row in column.rows), strict=True)


@pytest.mark.check_value
@pytest.mark.parametrize("column", LINES)
@given(share=st.floats(0, 1))
def test_amounts_agree_with_numpy(column, share):
    """numpy.interp is the outside oracle."""
    row_pd = column.first_pd + share * (column.last_pd - column.first_pd)
    pds, mms = points(column)

    assert amount_at(column, row_pd).mm == pytest.approx(np.interp(row_pd, pds, mms), abs=1e-6)


@pytest.mark.parametrize("column", BANDS)
@given(row_pd=st.floats(60, 100))
def test_nothing_is_interpolated_between_bands(column, row_pd):
    """The lower of two bands holds until the next begins: 60, 70, 80 and 90 Δ in the printed table."""
    step = min(int(row_pd + 1e-6) // 10, 9) - 6

    assert amount_at(column, row_pd).mm == column.rows[0].mm + 0.5 * step


@pytest.mark.check_value
@pytest.mark.parametrize("column", LINES)
@given(share=st.floats(0, 1))
def test_effects_agree_with_numpy_read_backwards(column, share):
    pds, mms = points(column)
    mm = mms[0] + share * (mms[-1] - mms[0])
    known = [row.first_pd for row in column.rows if abs(row.mm - mm) <= 1e-6]
    expected = known[0] if known else np.interp(mm, mms, pds)

    assert effect_of(column, mm, near_pd=expected).pd == pytest.approx(expected / 2, abs=1e-4)


@pytest.mark.parametrize("column", COLUMNS)
def test_no_effect_is_made_up_outside_the_column(column):
    first_pd, first_mm = column.first_pd, column.rows[0].mm
    last_pd, last_mm = column.last_pd, column.rows[-1].mm

    beyond = effect_of(column, last_mm + 1, near_pd=last_pd)
    below = effect_of(column, first_mm / 2, near_pd=first_pd)

    assert (beyond.pd, beyond.basis) == (last_pd / 2, Basis.ABOVE_LAST_ROW)
    assert (below.pd, below.basis) == (first_pd / 4, Basis.BELOW_FIRST_ROW)


@pytest.mark.parametrize("column", COLUMNS)
@given(first=st.floats(0.5, 15), second=st.floats(0.5, 15), near_pd=st.floats(15, 70))
def test_a_larger_dose_never_has_a_smaller_effect(column, first, second, near_pd):
    less, more = sorted((first, second))

    assert effect_of(column, less, near_pd).pd <= effect_of(column, more, near_pd).pd + 1e-4


@pytest.mark.parametrize(
    ("exact", "rounded"),
    [
        (3.0, 3.0), (3.24, 3.0), (3.25, 3.0), (3.26, 3.5), (3.5, 3.5), (3.74, 3.5), (3.75, 3.5), (3.76, 4.0),
        (3.2500000001, 3.0), (3.4999999999, 3.5), (0.1 * 3 + 3.2, 3.5), (6.75, 6.5),
    ],
)  # fmt: skip
def test_a_dose_goes_to_the_nearest_half_millimetre_and_a_tie_to_the_smaller(exact, rounded):
    assert to_half_mm(exact) == rounded


def test_interpolation_and_rounding_are_steps_with_their_figures():
    """Wright, ET 37: between 35 (5.0) and 40 (5.5) lies 5.2, rounded to 5.0, which is the row of 35."""
    offered = options(37)["recess-both-mr"]
    steps = {step.code: step.facts for step in offered.doses[0].steps}

    assert steps["interpolation"] == {"below_pd": 35, "below_mm": 5.0, "above_pd": 40, "above_mm": 5.5, "mm": 5.2}
    assert steps["rounding"] == {"exact_mm": 5.2, "mm": 5.0}
    assert (offered.expected_correction_pd, offered.expected_residual_pd) == (35.0, 2.0)


def test_a_flat_stretch_of_the_table_answers_what_was_asked():
    """Classic Parks prints LR resect 9.0 for 40 and for 50 Δ: at 45 it stands for 45."""
    offered = options(45, table="classic-parks")["resect-both-lr"]

    assert set(doses(offered).values()) == {9.0}
    assert offered.expected_residual_pd == 0


def test_the_figures_of_a_table_from_memory_stay_from_memory_when_interpolated():
    offered = options(37, table="classic-parks")["recess-both-mr"]
    marks = {step.code: step.provenance.mark for step in offered.doses[0].steps}

    assert marks["interpolation"] == "from memory, verify"


@pytest.mark.parametrize("angle", [14.9, -14.9, 10, 8])
def test_below_the_first_row_there_is_a_stop_and_no_dose(angle):
    for option in [option for option in options(angle).values() if option.table is None]:
        if len(option.id.split("-")) > 3 or "-both-" in option.id:
            assert option.doses == ()
            assert codes(option.notices) == ["below_table"]
            assert option.expected_residual_pd == angle


def test_above_the_last_row_its_dose_is_used_with_a_caution_that_names_it():
    """Wright, both LR resect ends at 50 Δ with 8.0 mm; 60 Δ leave 10."""
    offered = options(60)["resect-both-lr"]

    assert set(doses(offered).values()) == {8.0}
    assert offered.expected_residual_pd == 10
    (notice,) = [notice for notice in offered.notices if notice.code == "last_row_used"]
    assert notice.facts == {"last_pd": 50, "row_pd": 60, "last_mm": 8.0}
    assert notice.level == "caution"


def test_further_above_the_last_row_there_is_a_stop_and_no_dose():
    offered = options(60.1)["resect-both-lr"]

    assert offered.doses == ()
    assert codes(offered.notices) == ["beyond_table"]
    assert offered.expected_residual_pd == 60.1


def test_the_distance_from_the_limbus_is_the_insertion_plus_a_recession_and_the_insertion_for_a_resection():
    """Insertions: Fuchs 1884, MR 5.5 and LR 6.9 mm."""
    offered = options(40)["recess-mr-resect-lr-left"]

    assert [(dose.insertion_mm, dose.limbus_mm) for dose in offered.doses] == [(5.5, 11.0), (6.9, 6.9)]
