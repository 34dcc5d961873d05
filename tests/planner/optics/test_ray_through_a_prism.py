"""What a prism turns by agrees with print, with measured prism bars and with an independent ray tracer."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.errors import Refused
from planner.optics import Held, Material
from planner.optics.prism import INDEX, LABELLED_FOR, turned_pd
from tests.planner.optics.ray import apex_for, pd_held

GLASS, ACRYLIC = Material.GLASS, Material.ACRYLIC
FRONTAL, PRENTICE, MINIMUM = Held.FRONTAL, Held.PRENTICE, Held.MINIMUM_DEVIATION


def test_a_40_glass_prism_held_frontal_acts_as_32():
    """Thompson & Guyton, Ophthalmology 1983;90:204-10, abstract: 32 Δ."""
    acts_pd = turned_pd((40,), GLASS, FRONTAL)

    assert round(acts_pd) == 32
    assert acts_pd == pytest.approx(32.3, abs=0.05)


def test_5_and_40_glass_stacked_act_as_59():
    """Thompson & Guyton, Ophthalmology 1983;90:204-10, abstract: not 45 but 59 Δ."""
    acts_pd = turned_pd((40, 5), GLASS, PRENTICE)

    assert round(acts_pd) == 59
    assert acts_pd == pytest.approx(58.5, abs=0.05)


MEASURED_BARS = [
    pytest.param(25, 27.8, 0.03, id="25-held-prentice-measured-27.8"),
    pytest.param(40, 67.5, 0.05, id="40-held-prentice-measured-67.5"),
]


@pytest.mark.parametrize(("label_pd", "measured_pd", "share"), MEASURED_BARS)
def test_a_plastic_bar_in_prentice_position_reads_as_measured_on_the_bench(label_pd, measured_pd, share):
    """Flueler et al., Klin Monbl Augenheilkd 1996;208:343-7, optical bench.

    The bar was within 0.4 Δ of its frontal label; near total reflection that alone moves the result by 3 Δ.
    """
    assert turned_pd((label_pd,), ACRYLIC, PRENTICE) == pytest.approx(measured_pd, rel=share)


ONE_PRISM = [
    pytest.param(material, held, label_pd, id=f"snell-{material}-{held}-{label_pd}".replace(" ", "-"))
    for material in Material
    for held in Held
    for label_pd in (5, 15, 25, 40)
]


@pytest.mark.check_value
@pytest.mark.parametrize(("material", "held", "label_pd"), ONE_PRISM)
def test_one_prism_agrees_with_a_traced_ray(material, held, label_pd):
    """Oracle: vector ray tracing, apex by root finding, minimum deviation by minimisation."""
    index = INDEX[material]
    apex = apex_for(label_pd, index, LABELLED_FOR[material].value)

    assert turned_pd((label_pd,), material, held) == pytest.approx(pd_held(apex, index, held.value), abs=1e-4)


STACKS = [
    pytest.param(material, first_pd, second_pd, id=f"snell-stack-{material}-{first_pd}-{second_pd}")
    for material, first_pd, second_pd in (
        (GLASS, 40, 5),
        (GLASS, 20, 10),
        (GLASS, 25, 10),
        (ACRYLIC, 40, 5),
        (ACRYLIC, 20, 20),
        (ACRYLIC, 30, 30),
    )
]


@pytest.mark.check_value
@pytest.mark.parametrize(("material", "first_pd", "second_pd"), STACKS)
def test_stacked_prisms_agree_with_a_traced_ray(material, first_pd, second_pd):
    index, held = INDEX[material], LABELLED_FOR[material]
    apex = sum(apex_for(label_pd, index, held.value) for label_pd in (first_pd, second_pd))

    assert turned_pd((first_pd, second_pd), material, held) == pytest.approx(pd_held(apex, index, held.value), abs=1e-3)


@pytest.mark.parametrize(
    ("labels_pd", "material", "held"),
    [
        pytest.param((50, 50), ACRYLIC, FRONTAL, id="50-and-50-acrylic"),
        pytest.param((40, 40), GLASS, PRENTICE, id="40-and-40-glass"),
        pytest.param((45,), ACRYLIC, PRENTICE, id="45-acrylic-held-prentice"),
    ],
)
def test_where_no_light_comes_through_it_is_refused(labels_pd, material, held):
    """Oracle: sin of the inner angle times the index exceeds 1, by the traced ray."""
    index = INDEX[material]
    apex = sum(apex_for(label_pd, index, LABELLED_FOR[material].value) for label_pd in labels_pd)
    with pytest.raises(Refused) as refusal:
        turned_pd(labels_pd, material, held)

    assert refusal.value.faults[0].code == "total_internal_reflection"
    with pytest.raises(TypeError):
        pd_held(apex, index, held.value)


@given(st.floats(0, 45), st.sampled_from(Material))
def test_a_prism_held_as_labelled_acts_as_labelled(label_pd, material):
    assert turned_pd((label_pd,), material, LABELLED_FOR[material]) == label_pd


@given(st.floats(0, 30), st.floats(0.5, 10), st.sampled_from(Material), st.sampled_from(Held))
def test_a_stronger_prism_never_turns_less(label_pd, more_pd, material, held):
    assert turned_pd((label_pd + more_pd,), material, held) > turned_pd((label_pd,), material, held)


@given(st.floats(1, 25), st.floats(1, 10), st.sampled_from(Material))
def test_the_order_of_stacked_prisms_does_not_matter(first_pd, second_pd, material):
    held = LABELLED_FOR[material]
    one, other = turned_pd((first_pd, second_pd), material, held), turned_pd((second_pd, first_pd), material, held)

    assert one == pytest.approx(other, rel=1e-12)


@given(st.floats(1, 25), st.floats(1, 10), st.sampled_from(Material))
def test_stacked_prisms_act_as_more_than_the_sum_of_their_labels(first_pd, second_pd, material):
    """Thompson & Guyton 1983: stacking adds too much."""
    assert turned_pd((first_pd, second_pd), material, LABELLED_FOR[material]) > first_pd + second_pd
