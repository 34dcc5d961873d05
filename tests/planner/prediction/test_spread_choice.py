"""Which published spread stands for a horizontal operation."""

import pytest

from planner.anatomy import Eye, Muscle
from planner.prediction import horizontal_spread
from planner.provenance import Mark
from planner.values.option import Dose, Operation

RECESS, RESECT = Operation.RECESS, Operation.RESECT
RIGHT, LEFT = Eye.RIGHT, Eye.LEFT


def dose(eye, muscle, operation, mm):
    return Dose(
        eye=eye,
        muscle=muscle,
        operation=operation,
        mm=mm,
        table_mm=mm,
        changed=False,
        insertion_mm=5.5,
        limbus_mm=5.5 + mm,
        steps=(),
    )


ONE_EYE_XT = (dose(LEFT, Muscle.LR, RECESS, 7.0), dose(LEFT, Muscle.MR, RESECT, 5.5))
BOTH_LR = (dose(RIGHT, Muscle.LR, RECESS, 7.0), dose(LEFT, Muscle.LR, RECESS, 7.0))
BOTH_MR = (dose(RIGHT, Muscle.MR, RECESS, 4.5), dose(LEFT, Muscle.MR, RECESS, 4.5))
THREE = (*BOTH_MR, dose(LEFT, Muscle.LR, RESECT, 7.0))

PUBLISHED = [
    pytest.param(ONE_EYE_XT, -35, 8, 12.5 * 0.60, id="one-eye-xt-child-lai-2025"),
    pytest.param(ONE_EYE_XT, -35, 40, 12.5 * 0.62, id="one-eye-xt-adult-lai-2025"),
    pytest.param(ONE_EYE_XT, -35, None, 12.5 * 0.62, id="one-eye-xt-age-unknown-takes-the-wider"),
    pytest.param(THREE, 60, 30, 16 * 0.62, id="three-muscles-et-bayramlar"),
    pytest.param((dose(LEFT, Muscle.MR, RECESS, 5.5),), 20, 5, 2.51, id="one-mr-5.5-pmid-20795601"),
    pytest.param((dose(LEFT, Muscle.MR, RECESS, 6.0),), 24, 5, 4.91, id="one-mr-6.0-for-24-pmid-20795601"),
    pytest.param((dose(LEFT, Muscle.MR, RECESS, 6.0),), 18, 5, 1.98, id="one-mr-6.0-for-18-zak-1986"),
]


@pytest.mark.parametrize(("doses", "deviation_pd", "age_years", "sd_pd"), PUBLISHED)
def test_the_operations_own_series_is_used(doses, deviation_pd, age_years, sd_pd):
    chosen = horizontal_spread(doses, deviation_pd, age_years)

    assert chosen.sd_pd == pytest.approx(sd_pd)
    assert chosen.reason.code == "spread_published"


BORROWED = [
    pytest.param(BOTH_MR, 30, 9 * 0.62, id="both-mr"),
    pytest.param(BOTH_LR, -30, 14 * 0.62, id="both-lr"),
    pytest.param((dose(LEFT, Muscle.LR, RESECT, 5.0),), 15, 5 * 0.62, id="one-lr-resection"),
    pytest.param((dose(LEFT, Muscle.MR, RECESS, 5.2),), 18, 5.2 * 0.62, id="a-dose-between-the-rows"),
]


@pytest.mark.parametrize(("doses", "deviation_pd", "sd_pd"), BORROWED)
def test_a_borrowed_spread_says_so(doses, deviation_pd, sd_pd):
    chosen = horizontal_spread(doses, deviation_pd, 30)

    assert chosen.sd_pd == pytest.approx(sd_pd)
    assert chosen.reason.code == "spread_borrowed"
    assert chosen.reason.provenance.mark is Mark.HOUSE_RULE


def test_right_and_left_make_no_difference():
    swapped = tuple(dose(each.eye.other, each.muscle, each.operation, each.mm) for each in ONE_EYE_XT)

    assert horizontal_spread(swapped, -35, 8).sd_pd == horizontal_spread(ONE_EYE_XT, -35, 8).sd_pd
