"""The early overcorrection of an intermittent exodeviation is the surgeon's setting, and is refused elsewhere."""

import pytest

from planner.errors import Refused
from tests.planner.patients import codes, doses, options

INTERMITTENT = {"constancy": "intermittent"}


def test_the_deviation_and_what_is_wanted_on_top_are_dosed_together():
    """Wright, XT: 20 Δ 5.0 mm, 25 Δ 6.0 mm: 20 and 5 wanted are dosed as 25."""
    offered = options(-20, overcorrection_pd=5.0, **INTERMITTENT)["recess-both-lr"]

    assert set(doses(offered).values()) == {6.0}
    assert (offered.expected_correction_pd, offered.expected_residual_pd) == (-25.0, 5.0)


def test_the_step_says_what_the_surgeon_wants_and_from_where():
    dose = options(-20, overcorrection_pd=5.0, **INTERMITTENT)["recess-both-lr"].doses[0]

    assert codes(dose.steps)[:4] == ["reading", "overcorrection", "share", "row"]
    assert dose.steps[1].facts == {"overcorrection_pd": 5.0, "dosed_pd": 25.0}
    assert dose.steps[1].provenance.mark == "common practice"


def test_what_is_wanted_speaks_against_no_option():
    offered = options(-25, overcorrection_pd=10.0, **INTERMITTENT)["recess-both-lr"]

    assert offered.expected_residual_pd == 10
    assert "leaves_residual" not in codes(offered.reasons_against)
    assert "large_overcorrection" not in codes(offered.notices)


def test_more_than_10_is_an_overcorrection_to_be_acknowledged_all_the_same():
    offered = options(-20, overcorrection_pd=15.0, **INTERMITTENT)["recess-both-lr"]

    assert "large_overcorrection" in codes(offered.notices)


def test_the_last_row_stands_in_as_long_as_it_misses_what_is_wanted_by_10_at_most():
    """Wright, both LR recess ends at 50 Δ: 50 and 10 wanted are missed by 10, 51 and 10 by 11."""
    near, beyond = (options(-angle, overcorrection_pd=10.0, **INTERMITTENT)["recess-both-lr"] for angle in (50, 51))

    assert "last_row_used" in codes(near.notices)
    assert codes(beyond.notices) == ["beyond_table"]


@pytest.mark.parametrize(
    ("angle", "constancy"),
    [(30, "intermittent"), (-30, "constant"), (-30, "latent"), (-30, None)],
)
def test_it_is_refused_for_any_other_deviation(angle, constancy):
    with pytest.raises(Refused) as caught:
        options(angle, overcorrection_pd=5.0, constancy=constancy)

    (fault,) = caught.value.faults
    assert (fault.code, fault.field, fault.value) == ("overcorrection_not_meant", "overcorrection_pd", "5")


def test_none_wanted_is_none_asked():
    assert options(-30, overcorrection_pd=0.0) == options(-30)
