"""Palsies and restrictions: which principle holds, what becomes of the standard doses, which figures exist."""

import pytest

from planner.proposal import propose
from planner.records.diagnosis import Diagnosis
from tests.planner.additions.pieces import diagnosed, duction, levels, restricted
from tests.planner.patients import case

H, V = "horizontal", "vertical"

TABLE = {
    # common practice, but for high myopia (from memory, verify)
    Diagnosis.THIRD_NERVE_PALSY: ("stop", {H, V}, set()),
    Diagnosis.FOURTH_NERVE_PALSY: ("note", {V}, {"fifteen_rule"}),
    Diagnosis.SIXTH_NERVE_PALSY: ("caution", {H}, set()),
    Diagnosis.THYROID_EYE_DISEASE: ("stop", {H, V}, {"thyroid_inferior_rectus"}),
    Diagnosis.DUANE_SYNDROME: ("stop", {H}, set()),
    Diagnosis.BROWN_SYNDROME: ("stop", {V}, set()),
    Diagnosis.MOEBIUS_SYNDROME: ("stop", {H}, set()),
    Diagnosis.CONGENITAL_FIBROSIS: ("stop", {H, V}, set()),
    Diagnosis.MONOCULAR_ELEVATION_DEFICIENCY: ("stop", {V}, set()),
    Diagnosis.ORBITAL_FRACTURE: ("stop", {H, V}, set()),
    Diagnosis.PROGRESSIVE_EXTERNAL_OPHTHALMOPLEGIA: ("caution", {H, V}, set()),
    Diagnosis.MYASTHENIA: ("caution", {H, V}, set()),
    Diagnosis.SKEW_DEVIATION: ("caution", {V}, set()),
    Diagnosis.INTERNUCLEAR_OPHTHALMOPLEGIA: ("caution", {H}, set()),
    Diagnosis.HIGH_MYOPIA: ("caution", {H, V}, set()),
    Diagnosis.NYSTAGMUS: ("caution", {H}, set()),
}
PLANNED_AS_USUAL = set(Diagnosis) - set(TABLE)


def proposal(**examined):
    return propose(case(40, vertical_pd=12, **examined))


def level_of(options, code):
    return {levels(option).get(code) for option in options if option.doses}


@pytest.mark.parametrize("diagnosis", TABLE, ids=str)
def test_each_diagnosis_has_its_principle_and_figures(diagnosis):
    level, concerns, figures = TABLE[diagnosis]
    (found,) = proposal(diagnoses=(diagnosed(diagnosis, "left"),)).principles

    assert (found.level, set(found.concerns), {each.code for each in found.figures}) == (level, concerns, figures)
    assert found.topic == diagnosis.value
    assert found.provenance.source


@pytest.mark.parametrize("diagnosis", PLANNED_AS_USUAL, ids=str)
def test_other_diagnoses_are_planned_as_usual(diagnosis):
    assert proposal(diagnoses=(diagnosed(diagnosis),)).principles == ()


@pytest.mark.parametrize("diagnosis", [each for each in TABLE if TABLE[each][0] == "stop"], ids=str)
def test_a_principle_that_stops_stops_every_standard_dose_that_it_concerns(diagnosis):
    made = proposal(diagnoses=(diagnosed(diagnosis, "left"),))
    (found,) = made.principles
    _, concerns, _ = TABLE[diagnosis]
    recti = [option for option in made.additions if option.family == "vertical recti"]

    assert level_of(made.options, found.code) == ({"stop"} if H in concerns else {None})
    own_figure = {"caution"} if diagnosis is Diagnosis.THYROID_EYE_DISEASE else set()
    assert level_of(recti, found.code) == ({"stop"} | own_figure if V in concerns else {None})


@pytest.mark.parametrize(
    ("grade", "level"), [(None, "caution"), (-4, "stop"), (-3, "caution"), (-1, "caution"), (0, "caution")]
)
def test_what_is_left_of_abduction_decides_in_sixth_nerve_palsy(grade, level):
    ductions = () if grade is None else (duction("left", "LR", grade),)
    made = proposal(diagnoses=(diagnosed("sixth nerve palsy", "left"),), ductions=ductions)

    assert level_of(made.options, "principle-sixth_nerve_palsy-left") == {level}
    assert {option.expected_residual_pd for option in made.additions} == {40}


def test_without_function_the_vessels_of_three_recti_are_counted():
    (found,) = proposal(
        diagnoses=(diagnosed("sixth nerve palsy", "left"),), ductions=(duction("left", "LR", -4),)
    ).principles

    assert "transposed" in found.text
    assert found.figures[0].facts == {"eyes": 2, "of_eyes": 87}


def test_abduction_that_is_gone_stops_whatever_the_cause():
    made = proposal(ductions=(duction("right", "LR", -4), duction("left", "LR", -3)))

    assert [each.code for each in made.principles] == ["principle-abduction_lost-right"]
    assert level_of(made.options, "principle-abduction_lost-right") == {"stop"}


def test_a_palsy_of_no_named_eye_is_told_of_both():
    made = proposal(diagnoses=(diagnosed("sixth nerve palsy"),), ductions=(duction("left", "LR", -4),))

    assert {each.code: each.level.value for each in made.principles} == {
        "principle-sixth_nerve_palsy-left": "stop",
        "principle-sixth_nerve_palsy-right": "caution",
    }


@pytest.mark.parametrize(
    ("field", "tight", "stopped", "free"),
    [
        # restricted in the field of a muscle: its antagonist is tight
        ("LR", "MR", "resect-both-lr", "recess-both-mr"),
        ("MR", "LR", "recess-both-mr", None),
        ("SR", "IR", "resect-sr-left", "recess-ir-left"),
    ],
)
def test_nothing_is_done_against_a_tight_muscle_that_is_not_released(field, tight, stopped, free):
    made = proposal(forced_ductions=(restricted("left", field),))
    options = {option.id: levels(option) for option in (*made.options, *made.additions)}
    code = f"not_released-left-{tight.lower()}"

    assert options[stopped][code] == "stop"
    assert free is None or code not in options[free]
    assert [each.code for each in made.principles] == [f"principle-release-left-{tight.lower()}"]


def test_in_thyroid_disease_the_recession_that_has_a_figure_is_cautioned_and_all_else_stopped():
    """PMC6081543: inferior rectus recession 3.5 Δ/mm."""
    made = proposal(diagnoses=(diagnosed("thyroid eye disease"),))
    additions = {option.id: levels(option)["principle-thyroid_eye_disease"] for option in made.additions}

    assert additions == {
        "recess-ir-left": "caution",
        "recess-sr-right": "stop",
        "resect-ir-right": "stop",
        "resect-sr-left": "stop",
    }
