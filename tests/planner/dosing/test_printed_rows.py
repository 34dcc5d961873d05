"""Every printed figure of the tables comes out of the engine unchanged, for both directions and both eyes."""

import pytest

from planner.dosing.recipe import Recipe
from tests.planner.patients import doses, options
from tests.planner.published_rows import ROWS, banded_operations, printed, printed_operations

PRINTED = [pytest.param(*each, id=f"{each[0]}-{each[1]}-{each[2]:g}-{each[3]}") for each in printed_operations()]
SIGNS = {"eso": 1, "exo": -1}


def test_the_list_of_printed_figures_is_complete():
    """9 + 7 + 18, 7 + 6 + 14, 7 + 7 + 14 and 6 + 4 + 14 operations, counted by hand on the printed rows."""
    assert len(PRINTED) == 113


@pytest.mark.check_value
@pytest.mark.parametrize(("table", "direction", "deviation", "option", "expected"), PRINTED)
def test_a_printed_row_is_dosed_as_printed(table, direction, deviation, option, expected):
    offered = options(SIGNS[direction] * deviation, table=table)[option]

    assert doses(offered) == expected
    assert offered.expected_correction_pd == SIGNS[direction] * deviation
    assert offered.expected_residual_pd == 0
    for dose in offered.doses:
        assert [step.code for step in dose.steps][:4] == ["reading", "share", "row", "limbus"]


@pytest.mark.parametrize(("table", "direction"), ROWS)
def test_a_printed_dash_gives_no_dose_or_says_that_the_last_row_stands_in(table, direction):
    for deviation, *figures in printed(table, direction):
        offered = options(SIGNS[direction] * deviation, table=table).values()
        both = [option for option in offered if "-both-" in option.id and len(option.id.split("-")) == 3]
        for option, figure in zip(sorted(both, key=lambda each: each.id), figures[:2], strict=True):
            codes = {notice.code for notice in option.notices}

            assert (figure is None) == bool(codes & {"beyond_table", "last_row_used"}), (deviation, option.id)


BANDS = [pytest.param(*each, id=f"{each[0]}-{each[1]:g}-{each[2]:g}-{each[3]}") for each in banded_operations()]


def test_the_list_of_printed_bands_is_complete():
    """4 bands in each direction; both recess, and recess and resect in each eye; each at both its ends."""
    assert len(BANDS) == 2 * 4 * 3 * 2


@pytest.mark.check_value
@pytest.mark.parametrize(("direction", "deviation", "beginning", "option", "expected"), BANDS)
def test_a_printed_band_is_dosed_as_printed_at_both_its_ends(direction, deviation, beginning, option, expected):
    """PMC7265262, Table 1."""
    offered = options(SIGNS[direction] * deviation, table="large-angle-two-muscles")[option]

    assert doses(offered) == expected
    assert offered.expected_residual_pd == 0
    for dose in offered.doses:
        (band,) = [step for step in dose.steps if step.code == "band"]
        assert band.facts["from_pd"] == beginning
        assert band.provenance.mark == "published"
    assert not [notice for notice in offered.notices if notice.level == "stop"]


@pytest.mark.parametrize(("muscles", "row_pd"), [(1, 120), (2, 60), (3, 40), (4, 30)])
def test_n_muscles_answer_a_deviation_at_the_row_of_twice_the_angle_over_n(muscles, row_pd):
    """Each muscle at its row's amount corrects half of the row's deviation (common practice)."""
    recipe = Recipe(id="any", family="any", title="any", moves=("any",) * muscles)

    assert recipe.row_pd(60) == row_pd


def test_three_muscles_at_the_40_row_answer_60():
    """Worked example of the reference: both MR at the 40 Δ row and one LR resection of that row answer 60 Δ."""
    offered = options(60)["recess-both-mr-resect-lr-left"]

    assert doses(offered) == {
        ("right", "MR", "recess"): 5.5,
        ("left", "MR", "recess"): 5.5,
        ("left", "LR", "resect"): 6.5,
    }
    assert offered.expected_residual_pd == 0


def test_four_muscles_at_the_50_row_answer_100():
    offered = options(-100)["recess-both-lr-resect-both-mr"]

    assert set(doses(offered).values()) == {8.0, 6.5}
    assert offered.expected_residual_pd == 0


def test_one_muscle_is_dosed_at_the_row_of_twice_the_angle():
    """Doubling rule: 20 Δ at the row of 40 Δ, MR recess 5.5 (Zak 1986: 6 mm for 14-20 Δ, mean effect 16 Δ)."""
    offered = options(20)["recess-mr-right"]

    assert doses(offered) == {("right", "MR", "recess"): 5.5}
    assert offered.expected_residual_pd == 0
