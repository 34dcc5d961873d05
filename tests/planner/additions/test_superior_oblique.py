"""The superior oblique: no dose is published for tuck and weakening, and none is made up."""

import pytest

from planner.errors import Refused
from tests.planner.additions.pieces import additions, diagnosed, graded, levels
from tests.planner.patients import change, reading

WEAK = {"versions": (graded("right", "SO", -2),)}
STEPS = (reading(0, 4, "right"), reading(0, 20, "left"), reading(0, 22, "tilt_right"), reading(0, 4, "tilt_left"))
NAMED = {"diagnoses": (diagnosed("fourth nerve palsy", "right"),)}


@pytest.mark.parametrize(
    ("readings", "rest"), [((), WEAK), ((), NAMED), (STEPS, {})], ids=["underacts", "diagnosed", "three steps"]
)
def test_a_weak_muscle_of_the_higher_eye_may_be_tucked(readings, rest):
    option = additions(0, *readings, vertical_pd=12, **rest)["tuck-so-right"]
    (dose,) = option.doses

    assert (dose.mm, dose.table_mm, dose.limbus_mm) == (None, None, None)
    assert dose.attachment_words
    assert levels(option)["no_published_dose-right-so"] == "caution"
    assert option.expected[0].correction is None


def test_a_surgeon_who_tucks_by_millimetres_may_write_them_down():
    changes = (change("tuck-so-right", "right", "SO", 7.0),)
    (dose,) = additions(0, vertical_pd=12, changes=changes, **WEAK)["tuck-so-right"].doses

    assert (dose.mm, dose.table_mm, dose.changed) == (7.0, None, True)


def test_what_has_no_millimetres_cannot_be_changed():
    changes = (change("weaken-so-left", "left", "SO", 7.0),)
    with pytest.raises(Refused) as caught:
        additions(0, vertical_pd=12, changes=changes, versions=(graded("left", "SO", 2),))

    assert caught.value.faults[0].code == "dose_without_figure"


@pytest.mark.parametrize(("muscle_of", "offered"), [("left", True), ("right", False)])
def test_an_overacting_muscle_is_weakened_in_the_lower_eye_alone(muscle_of, offered):
    found = additions(0, vertical_pd=12, versions=(graded(muscle_of, "SO", 2),))

    assert (f"weaken-so-{muscle_of}" in found) is offered


def test_a_muscle_that_is_not_known_to_be_weak_is_not_tucked():
    assert not any(id_.startswith("tuck") for id_ in additions(0, vertical_pd=12))
