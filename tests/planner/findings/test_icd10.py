"""WHO ICD-10 suggestions: H49 to H51, without side or pattern."""

import re

import pytest

from tests.planner.examined import found, said, straight, taken


def codes(*readings, **rest):
    return {finding.facts["icd10"]: finding for finding in said(found(*readings, **rest), "icd10")}


def diagnosed(diagnosis, eye=None):
    return {"diagnoses": [{"diagnosis": diagnosis, "eye": eye}]}


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("diagnosis", "code"),
    [
        # named by the classification itself, WHO ICD-10 chapter VII
        ("third nerve palsy", "H49.0"),
        ("fourth nerve palsy", "H49.1"),
        ("sixth nerve palsy", "H49.2"),
        ("progressive external ophthalmoplegia", "H49.4"),
        ("Brown syndrome", "H50.6"),
        ("Duane syndrome", "H50.8"),
        ("convergence insufficiency", "H51.1"),
        ("internuclear ophthalmoplegia", "H51.2"),
        # mechanical, in use
        ("thyroid eye disease", "H50.6"),
        ("orbital fracture", "H50.6"),
        ("congenital fibrosis of the extraocular muscles", "H50.6"),
    ],
)
def test_the_code_of_a_diagnosis(diagnosis, code):
    found_codes = codes(straight(30, 8), constancy="constant", **diagnosed(diagnosis, "left"))

    assert found_codes[code].strength == "clear"
    assert ("H50.0" in found_codes) == (diagnosis == "convergence insufficiency")


@pytest.mark.parametrize(
    ("angle", "constancy", "code", "strength"),
    [
        (30, "constant", "H50.0", "clear"),
        (-30, "constant", "H50.1", "clear"),
        (30, "intermittent", "H50.3", "clear"),
        (-30, "intermittent", "H50.3", "clear"),
        (-12, "latent", "H50.5", "clear"),
        (30, None, "H50.0", "borderline"),
        (-30, None, "H50.1", "borderline"),
        # Holmes 2009: 4.1 Δ and 4.1 / 1.96
        (3, "constant", "H50.0", "borderline"),
        (2, "constant", "H50.0", "cannot tell"),
    ],
)
def test_the_code_of_a_horizontal_deviation(angle, constancy, code, strength):
    found_codes = codes(straight(angle), **({"constancy": constancy} if constancy else {}))

    assert list(found_codes) == [code]
    assert found_codes[code].strength == strength


def test_an_incomitant_deviation_is_not_called_concomitant():
    found_codes = codes(straight(40), taken("left", 60), constancy="constant")

    assert list(found_codes) == ["H50.4"]
    assert "ductions" in found_codes["H50.4"].settle


@pytest.mark.parametrize(
    ("readings", "rest", "code"),
    [
        pytest.param([straight(0, 10)], {}, "H50.2", id="vertical"),
        pytest.param([straight(0)], {"dvd_left_pd": 10}, "H51.8", id="dissociated"),
        pytest.param(
            [straight(30)],
            {
                "ductions": [{"eye": "left", "muscle": "LR", "grade": -3}],
                "forced_ductions": [{"eye": "left", "muscle": "LR", "result": "free"}],
            },
            "H49.2",
            id="weak-lateral-rectus",
        ),
        pytest.param(
            [straight(30)],
            {"forced_ductions": [{"eye": "left", "muscle": "LR", "result": "restricted"}]},
            "H50.6",
            id="held-back",
        ),
    ],
)
def test_the_code_of_what_else_was_found(readings, rest, code):
    assert code in codes(*readings, **rest)


def test_a_hyper_within_chance_has_no_code():
    assert "H50.2" not in codes(straight(30, 2), constancy="constant")


@pytest.mark.parametrize("eye", ["right", "left", None])
def test_codes_carry_no_side(eye):
    for code, finding in codes(straight(30), **diagnosed("sixth nerve palsy", eye)).items():
        assert re.fullmatch(r"H(49|50|51)\.[0-9]", code)
        assert "right" not in finding.facts["title"]
        assert "left" not in finding.facts["title"]
