"""What goes with each muscle: suture, steps, checks and pitfalls for every operation, each with its source."""

import re
from dataclasses import replace

import pytest

from planner.anatomy import Muscle
from planner.card.steps import details
from planner.provenance import Mark
from planner.values.option import Operation
from tests.planner.signing.pieces import RIGHT_MR

EVERY = [(muscle, operation) for muscle in Muscle for operation in Operation]


def said(found):
    return (*found.sutures, *found.steps, *found.checks, *found.pitfalls)


@pytest.mark.parametrize(("muscle", "operation"), EVERY, ids=str)
def test_nothing_is_missing_for_any_operation_on_any_muscle(muscle, operation):
    found = details(replace(RIGHT_MR, muscle=muscle, operation=operation))

    assert found.sutures
    assert found.checks[0].code == "ductions_before"
    assert len(found.checks) > 1
    assert found.pitfalls
    for each in said(found):
        assert each.provenance.source
        assert each.text.endswith(".")


@pytest.mark.parametrize(("muscle", "operation"), EVERY, ids=str)
def test_no_sentence_names_a_side(muscle, operation):
    text = " ".join(each.text for each in said(details(replace(RIGHT_MR, muscle=muscle, operation=operation))))

    assert not re.search(r"\b(left|right)\b", text, re.IGNORECASE)


def test_the_figures_of_perforation_and_of_thin_sclera_are_published():
    (thin,) = (each for each in details(RIGHT_MR).pitfalls if each.code == "thin_sclera")

    assert thin.provenance.mark is Mark.PUBLISHED
    assert "0.3 mm" in thin.text
    assert "0.13 %" in thin.text


@pytest.mark.check_value
def test_the_rate_of_perforation_is_the_surveys():
    """A survey of 554,000 muscles with 728 perforations."""
    (thin,) = (each for each in details(RIGHT_MR).pitfalls if each.code == "thin_sclera")
    (percent,) = re.findall(r"([0-9.]+) %", thin.text)

    assert float(percent) == round(100 * 728 / 554_000, 2)
