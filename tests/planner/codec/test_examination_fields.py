"""What an examination may say beside its figures, and what it may leave out."""

import pytest

from planner.codec import read
from planner.errors import Refused
from planner.records.examination import Examination
from planner.records.technique import Condition, Method
from tests.planner.examined import examined, straight


def fault_of(*readings, **rest):
    with pytest.raises(Refused) as caught:
        examined(*readings or (straight(30),), **rest)
    (fault,) = caught.value.faults
    return fault.code, fault.field


def test_a_body_of_the_first_version_is_read_as_it_was():
    body = {"schema": 1, "examined_on": "2026-11-02", "readings": [straight(30)]}
    examination = read(Examination, body)
    (reading,) = examination.readings

    assert (reading.method, reading.technique, reading.condition, reading.repeat) == (
        Method.PRISM_COVER,
        None,
        Condition.PLAIN,
        1,
    )
    assert (examination.head_posture, examination.ductions, examination.diagnoses) == (None, (), ())


@pytest.mark.parametrize(
    "other",
    [
        {"repeat": 2},
        {"method": "prism reflex"},
        {"condition": "after patching"},
        {"at": "near"},
        {"correction": "without"},
    ],
    ids=lambda other: next(iter(other)),
)
def test_readings_are_told_apart_by_how_they_were_taken(other):
    assert len(examined(straight(30), straight(35, **other)).readings) == 2


def test_the_same_reading_twice_needs_a_number():
    assert fault_of(straight(30), straight(35)) == ("repeated", "readings.1")


@pytest.mark.parametrize(
    ("posture", "field"),
    [
        ({}, "head_posture"),
        ({"turn_deg": 10}, "head_posture"),
        ({"turn_deg": 10, "chin": "up"}, "head_posture.turn"),
        ({"tilt_deg": 10, "chin": "up"}, "head_posture.tilt"),
        ({"chin_deg": 10, "turn": "left"}, "head_posture.chin"),
    ],
)
def test_degrees_of_a_posture_need_its_side(posture, field):
    with pytest.raises(Refused) as caught:
        examined(straight(30), head_posture=posture)

    assert ("missing", field) in [(fault.code, fault.field) for fault in caught.value.faults]


@pytest.mark.parametrize(
    ("rest", "fault"),
    [
        ({"ductions": [{"eye": "left", "muscle": "LR", "grade": 1}]}, ("out_of_range", "ductions.0.grade")),
        (
            {"forced_ductions": [{"eye": "left", "muscle": "LR", "result": "tight"}]},
            ("not_allowed", "forced_ductions.0.result"),
        ),
        ({"diagnoses": [{"diagnosis": "squint"}]}, ("not_allowed", "diagnoses.0.diagnosis")),
        ({"conditions": [{"breaker": "myasthenia", "presence": "yes"}]}, ("not_allowed", "conditions.0.presence")),
        ({"dvd_right_pd": -3}, ("out_of_range", "dvd_right_pd")),
        ({"excyclotorsion_down_deg": 41}, ("out_of_range", "excyclotorsion_down_deg")),
        ({"pupil_distance_mm": 30}, ("out_of_range", "pupil_distance_mm")),
        ({"spectacles_left_d": -21}, ("out_of_range", "spectacles_left_d")),
        ({"constancy": "often"}, ("not_allowed", "constancy")),
    ],
    ids=lambda value: next(iter(value)) if isinstance(value, dict) else "",
)
def test_what_cannot_be_is_refused(rest, fault):
    assert fault_of(**rest) == fault
