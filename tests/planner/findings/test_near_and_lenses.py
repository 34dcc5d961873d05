"""Near against distance by the patch and +3.00 tests, AC/A both ways, the accommodative part, and what patching did."""

import pytest

from tests.planner.examined import found, said, straight, the

NEAR = {"at": "near"}
PATCHED = {"at": "near", "condition": "after patching"}
PLUS_3 = {"at": "near", "condition": "through +3.00"}

BURIAN = [
    # types of exotropia after Burian by the 10 Δ rule (from memory); high AC/A: PMC6825697
    pytest.param((-30, -22), None, None, "basic", id="basic-exo"),
    pytest.param((-35, -20), None, None, "divergence excess, true or simulated", id="untested"),
    pytest.param((-35, -20), -33, None, "simulated divergence excess", id="patch-closes"),
    pytest.param((-35, -20), -22, None, "true divergence excess", id="patch-leaves"),
    pytest.param((-35, -20), -22, -34, "divergence excess with high AC/A", id="plus-3-closes"),
    pytest.param((-35, -20), -22, -24, "true divergence excess", id="plus-3-leaves"),
    pytest.param((-35, -20), -33, -34, "simulated divergence excess", id="the-patch-is-read-first"),
    pytest.param((-20, -35), None, None, "convergence insufficiency", id="larger-at-near"),
    pytest.param((20, 30), None, None, "esotropia larger at near, clinical high AC/A", id="eso-10"),
    pytest.param((20, 29.9), None, None, "basic", id="eso-9.9"),
    pytest.param((30, 18), None, None, "esotropia larger at distance", id="eso-larger-at-distance"),
]


@pytest.mark.check_value
@pytest.mark.parametrize(("angles", "patched", "plus", "name"), BURIAN)
def test_the_class_of_near_against_distance(angles, patched, plus, name):
    distance, near = angles
    tests = [straight(patched, **PATCHED)] if patched is not None else []
    tests += [straight(plus, **PLUS_3)] if plus is not None else []

    assert the(found(straight(distance), straight(near, **NEAR), *tests), "near_distance").facts["class"] == name


def test_an_untested_divergence_excess_asks_for_the_patch():
    finding = the(found(straight(-35), straight(-20, **NEAR)), "near_distance")

    assert finding.strength == "cannot tell"
    assert finding.settle.startswith("Patch one eye")


@pytest.mark.parametrize("aim", ["distance", "near", "after patching"])
def test_the_class_does_not_depend_on_what_the_plan_aims_at(aim):
    readings = (straight(-35), straight(-20, **NEAR), straight(-40, condition="after patching"))

    assert found(*readings, aim=aim).near.excess_pd == -15


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("readings", "code", "ratio", "name"),
    [
        # published examination questions: 6 cm + (30 - 36) / 3, and (25 - 10) / 3
        pytest.param((straight(36), straight(30, **NEAR)), "aca_heterophoria", 4.0, "normal", id="question-1"),
        pytest.param((straight(10), straight(25, condition="through -3.00")), "aca_gradient", 5.0, "normal", id="two"),
        # by the definitions
        pytest.param((straight(10), straight(28, **NEAR)), "aca_heterophoria", 12.0, "high", id="6-and-18-thirds"),
        pytest.param((straight(-10), straight(-25, **NEAR)), "aca_heterophoria", 1.0, "low", id="6-less-15-thirds"),
        pytest.param(
            (straight(10), straight(30, **NEAR), straight(6, **PLUS_3)), "aca_gradient", 8.0, "high", id="24-thirds"
        ),
        pytest.param(
            (straight(10), straight(30, **NEAR), straight(24, **PLUS_3)), "aca_gradient", 2.0, "low", id="6-thirds"
        ),
    ],
)
def test_the_ratio_of_convergence_to_accommodation(readings, code, ratio, name):
    facts = the(found(*readings, pupil_distance_mm=60), code).facts

    assert (facts["ratio"], facts["class"]) == (ratio, name)


def test_without_a_pupil_distance_there_is_no_heterophoria_ratio():
    assert not said(found(straight(36), straight(30, **NEAR)), "aca_heterophoria")


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("without", "with_it", "at", "words"),
    [
        # a part is shown by a real change (Holmes 2009: 12 Δ above 20 Δ, 6 Δ to 20 Δ); 10 Δ left over (from memory)
        pytest.param(40, 8, "distance", "fully accommodative", id="8-left"),
        pytest.param(40, 22, "distance", "partly accommodative", id="22-left"),
        pytest.param(40, 29, "distance", "no accommodative part shown", id="11-is-no-real-change"),
        pytest.param(18, 12, "near", "partly accommodative", id="6-is-a-real-change-to-20"),
    ],
)
def test_the_accommodative_part(without, with_it, at, words):
    readings = [straight(without, at=at, correction="without"), straight(with_it, at=at)]
    findings = found(*readings, *([straight(30)] if at == "near" else []))

    assert words in the(findings, "accommodative_part").text


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("before", "after", "strength"),
    [
        # a real change, Holmes 2009: 12 Δ above 20 Δ, 6 Δ from 10 to 20 Δ
        pytest.param(-30, -42, "clear", id="12-above-20"),
        pytest.param(-30, -41.9, "borderline", id="11.9-above-20"),
        pytest.param(-12, -18, "clear", id="6-to-20"),
        pytest.param(-12, -14, "cannot tell", id="2-to-20"),
    ],
)
@pytest.mark.parametrize(
    ("condition", "code"), [("after patching", "after_patching"), ("prism adapted", "prism_adapted")]
)
def test_what_patching_and_prisms_changed(before, after, strength, condition, code):
    finding = the(found(straight(before), straight(after, condition=condition)), f"{code}_distance")

    assert finding.strength == strength
    assert finding.facts["difference_pd"] == pytest.approx(after - before)
