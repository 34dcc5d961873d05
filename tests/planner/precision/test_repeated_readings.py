"""Several readings of the same thing: which one counts, and whether they disagree."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.errors import Refused
from planner.precision import Method, Repeat, settle
from planner.records.examination import Range
from planner.values.statement import Level

DISTANCE = Range.DISTANCE


def readings(*values_pd, method=Method.PRISM_COVER):
    return [Repeat(value_pd=value_pd, method=method) for value_pd in values_pd]


def test_the_only_reading_counts():
    agreement = settle(readings(35), DISTANCE)

    assert (agreement.chosen, agreement.value_pd, agreement.notices) == (0, 35, ())


def test_of_three_the_middle_one_counts():
    assert settle(readings(40, 30, 35), DISTANCE).value_pd == 35


@pytest.mark.parametrize(("values_pd", "chosen_pd"), [((40, 35), 35), ((-40, -35), -35)], ids=["eso", "exo"])
def test_of_two_the_one_nearer_zero_counts(values_pd, chosen_pd):
    assert settle(readings(*values_pd), DISTANCE).value_pd == chosen_pd


def test_the_most_exact_method_counts_however_many_others_there_are():
    repeats = [*readings(60, 60, method=Method.HIRSCHBERG), *readings(50, method=Method.KRIMSKY), *readings(40)]
    agreement = settle(repeats, DISTANCE)

    assert agreement.chosen == 3
    assert "most exact method" in agreement.reason.text


def test_readings_within_the_limits_of_a_difference_agree():
    """Holmes 2009: 10.4 Δ above 20 Δ at distance."""
    assert settle(readings(40, 50), DISTANCE).notices == ()


def test_readings_beyond_the_limits_of_a_difference_are_a_caution():
    """Holmes 2009: 10.4 Δ above 20 Δ at distance."""
    [notice] = settle(readings(40, 51), DISTANCE).notices

    assert (notice.level, notice.code) == (Level.CAUTION, "readings_disagree")
    assert notice.facts == {"spread_pd": 11, "limits_pd": 10.4}


def test_small_angles_disagree_sooner():
    """Holmes 2009: 5.8 Δ for 10 to 20 Δ at distance."""
    assert settle(readings(12, 18), DISTANCE).notices
    assert not settle(readings(12, 17), DISTANCE).notices


def test_without_a_reading_it_is_refused():
    with pytest.raises(Refused) as refusal:
        settle([], DISTANCE)

    assert refusal.value.faults[0].code == "no_readings"


REPEATS = st.lists(
    st.builds(Repeat, value_pd=st.integers(-80, 80).map(float), method=st.sampled_from(Method)), min_size=1, max_size=6
)


@given(REPEATS, st.sampled_from(Range))
def test_the_chosen_value_was_really_read(repeats, at):
    agreement = settle(repeats, at)

    assert repeats[agreement.chosen].value_pd == agreement.value_pd


@given(REPEATS, st.sampled_from(Range), st.data())
def test_the_size_chosen_does_not_depend_on_the_order(repeats, at, data):
    shuffled = data.draw(st.permutations(repeats))
    one, other = settle(repeats, at), settle(shuffled, at)

    assert abs(one.value_pd) == abs(other.value_pd)
    assert one.notices == other.notices


@given(REPEATS, st.sampled_from(Range))
def test_the_mirrored_readings_choose_the_mirror(repeats, at):
    mirrored = [Repeat(value_pd=-repeat.value_pd, method=repeat.method) for repeat in repeats]
    one, other = settle(repeats, at), settle(mirrored, at)

    assert other.value_pd == -one.value_pd
    assert bool(other.notices) == bool(one.notices)
