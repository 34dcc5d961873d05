"""Every printed dose of the series of one operation comes out of the engine unchanged, for both eyes.

Graded MR: PMID 20795601 (n = 123), mean correction at 6 months or later.
6 mm MR: Zak, J Pediatr Ophthalmol Strabismus 1986;23:17-21 (n = 53), mean correction 16 Δ.
9 mm LR: quoted by Chougule & Kekunnaya, BMJ Open Ophthalmol 2019;4:e000243.
12 mm LR: Feretis et al., J Pediatr Ophthalmol Strabismus 1990;27:315-6, 11.5 to 12 mm.
Graded LR: from memory, verify: 7-8, 8-9 and 9-10 mm.
Residual: case series of 38 children summarised by the American Academy of Ophthalmology, both LR after large MR
recessions, by mean correction.
"""

import pytest

from planner.series import series
from tests.planner.patients import before, codes, doses, options

PRINTED = """
    recess-mr-graded     15  5.0   17.33
    recess-mr-graded     18  5.0   17.33
    recess-mr-graded     19  5.5   18.57
    recess-mr-graded     20  5.5   18.57
    recess-mr-graded     21  6.0   23.67
    recess-mr-graded     25  6.0   23.67
    recess-mr-graded     26  6.5   26.68
    recess-mr-graded     30  6.5   26.68
    recess-mr-graded     31  7.0   31.93
    recess-mr-graded     35  7.0   31.93
    recess-mr-six-mm     14  6.0   16
    recess-mr-six-mm     20  6.0   16
    recess-lr-nine-mm   -20  9.0  -20
    recess-lr-twelve-mm -14  11.5 -14
    recess-lr-twelve-mm -16  11.5 -16
    recess-lr-graded    -15  7.0  -15
    recess-lr-graded    -20  8.0  -20
    recess-lr-graded    -25  9.0  -25
"""
"""Series, deviation Δ, mm (the smaller end where print gives a range), correction Δ."""

ROWS = [line.split() for line in PRINTED.strip().splitlines()]
RECESSED = (before("right", "MR", "recess", 6), before("left", "MR", "recess", 6))


@pytest.mark.check_value
@pytest.mark.parametrize("eye", ["right", "left"])
@pytest.mark.parametrize(("name", "deviation", "mm", "correction"), ROWS, ids=[f"{row[0]}{row[1]}" for row in ROWS])
def test_a_printed_dose_of_a_series_is_given_as_printed(name, deviation, mm, correction, eye):
    offered = options(float(deviation))[f"{name}-{eye}"]
    (dose,) = offered.doses

    assert (dose.eye, dose.mm, dose.changed) == (eye, float(mm), False)
    assert offered.expected_correction_pd == round(float(correction), 1)
    assert offered.table.id == name


@pytest.mark.check_value
@pytest.mark.parametrize(("deviation", "mm"), [(28.75, 6.0), (33.5, 7.0), (19.75, 5.0)])
def test_the_residual_series_is_given_as_printed(deviation, mm):
    """Both LR by 5, 6, 7 mm corrected 19.75, 28.75 and 33.5 Δ."""
    offered = options(deviation, previous_operations=RECESSED)["resect-both-lr-residual"]

    assert doses(offered) == {("right", "LR", "resect"): mm, ("left", "LR", "resect"): mm}
    assert abs(offered.expected_residual_pd) <= 0.05


def test_between_the_residual_series_rows_a_straight_line_is_computed():
    """24.25 lies halfway between 19.75 (5) and 28.75 (6): 5.5 mm, which corrects 24.25."""
    offered = options(24.25, previous_operations=RECESSED)["resect-both-lr-residual"]
    (step,) = [step for step in offered.doses[0].steps if step.code == "interpolation"]

    assert set(doses(offered).values()) == {5.5}
    assert step.provenance.mark == "computed"


@pytest.mark.parametrize(
    ("done", "offered"),
    [
        ((), False),
        ((before("right", "MR", "recess", 6),), False),
        ((before("right", "MR", "recess", 5.5), before("left", "MR", "recess", 5.5)), True),
        ((before("right", "MR", "recess", 5), before("left", "MR", "recess", 5.5)), False),
        ((before("right", "MR", "recess"), before("left", "MR", "recess")), True),
        ((before("right", "LR", "recess", 6), before("left", "LR", "recess", 6)), False),
    ],
)
def test_the_residual_series_is_offered_only_after_large_recessions_of_both_medial_recti(done, offered):
    """Its patients had medial recessions of 5.5 to 6.5 mm."""
    assert ("resect-both-lr-residual" in options(25, previous_operations=done)) is offered


@pytest.mark.parametrize(
    ("deviation", "expected"),
    [
        (13.9, set()),
        (14, {"recess-mr-six-mm"}),
        (18.5, {"recess-mr-six-mm", "recess-mr-graded"}),
        (20.5, {"recess-mr-graded"}),
        (35.1, set()),
        (-13.9, set()),
        (-14, {"recess-lr-twelve-mm"}),
        (-16.1, {"recess-lr-graded"}),
        (-20, {"recess-lr-graded", "recess-lr-nine-mm"}),
        (-25.1, set()),
    ],
)
def test_a_series_is_offered_only_for_what_it_was_done_for(deviation, expected):
    found = {option.table.id for option in options(deviation).values() if option.table}

    assert found == expected


def test_between_two_bands_the_lower_one_holds_and_that_is_said():
    offered = options(18.5)["recess-mr-graded-left"]

    assert set(doses(offered).values()) == {5.0}
    assert [step for step in codes(offered.doses[0].steps) if "band" in step] == ["band", "between_bands"]


def test_of_a_printed_range_the_smaller_end_is_taken_and_that_is_said():
    """From memory: LR 8 to 9 mm for 20 Δ."""
    offered = options(-20)["recess-lr-graded-left"]
    (step,) = [step for step in offered.doses[0].steps if step.code == "smaller_end"]

    assert step.facts["above_up_to_mm"] == 9.0
    assert "table_from_memory" in codes(offered.notices)


def test_a_dose_beyond_the_conventional_maximum_is_a_caution_where_the_series_did_it_and_a_stop_above():
    offered = options(-15)["recess-lr-twelve-mm-left"]
    levels = {notice.code: notice.level for notice in offered.notices}

    assert levels["beyond_conventional_maximum-left-lr"] == "caution"
    assert "stop" not in levels.values()


def test_every_series_names_its_source_and_its_patients():
    for each in series():
        assert each.stamp.provenance.source
        assert each.stamp.validity
        assert each.stamp.caution
        assert each.stamp.id.startswith(f"{each.operation}-")
