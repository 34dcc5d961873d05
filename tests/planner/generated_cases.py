"""Varied cases from a seed, the same on every machine: what server and phone must answer byte for byte alike.

Two of three are whole examinations (``generated_whole``), the rest plain ones, as the first version knew them.
Every case is valid for the codec; a few are refused by the engine (nothing to operate for, no such option to change),
for refusals must agree too.
"""

from __future__ import annotations

from typing import Any

from planner.records.examination import Acuity, Correction, FixingEye, Gaze, PastOperation, Range
from tests.planner.dice import Dice
from tests.planner.generated_whole import beside_the_readings, more_readings, wanted
from tests.planner.tables.own_table import OWN

TABLES = ("wright-after-parks", "classic-parks", "large-angle-two-muscles", OWN["id"])
HORIZONTAL_MUSCLES = ("MR", "LR")
MUSCLES = ("MR", "LR", "SR", "IR", "SO", "IO")
EYES = ("right", "left")
LEAST_CHANGED_PD, MOST_CHANGED_PD = 15, 50
USUAL_ANGLES = tuple(range(5, 101, 5))


def generated_cases(count: int, seed: int) -> list[dict[str, Any]]:
    """``count`` cases as JSON values."""
    dice = Dice(seed)
    return [_case(dice) for _ in range(count)]


def _case(dice: Dice) -> dict[str, Any]:
    horizontal_pd = _angle(dice)
    examination = _examination(dice, horizontal_pd)
    case: dict[str, Any] = {"schema": 1, "examination": examination, "table": _table(dice)}
    if case["table"] == OWN["id"]:
        case["clinic_table"] = OWN
    if dice.chance(67):
        examination["readings"] = more_readings(dice, examination["readings"])
        examination |= beside_the_readings(dice)
        case |= wanted(dice, examination)
    if dice.chance(70):
        case["born_on"] = f"{1930 + dice.below(95)}-{1 + dice.below(12):02}-{1 + dice.below(28):02}"
    if dice.chance(45) and (LEAST_CHANGED_PD <= abs(horizontal_pd) <= MOST_CHANGED_PD or dice.chance(3)):
        case["changes"] = _changes(dice, horizontal_pd)
    return case


def _table(dice: Dice) -> str:
    return dice.one_of(TABLES[:2]) if dice.chance(80) else dice.one_of(TABLES)


def _angle(dice: Dice) -> float:
    size = dice.one_of(USUAL_ANGLES) if dice.chance(60) else round(dice.below(1100) / 10, 1)
    if dice.chance(3):
        size = dice.one_of((0, 0.1, 7.5, 14.9, 15.0, 22.5, 52.5, 150))
    return size if dice.chance(55) else -size


def _examination(dice: Dice, horizontal_pd: float) -> dict[str, Any]:
    examination: dict[str, Any] = {
        "schema": 1,
        "examined_on": f"2026-{1 + dice.below(12):02}-{1 + dice.below(28):02}",
        "readings": _readings(dice, horizontal_pd),
    }
    if dice.chance(50):
        examination["fixing_eye"] = dice.one_of(FixingEye).value
    if dice.chance(60):
        examination["acuity_right"] = dice.one_of(Acuity).value if dice.chance(60) else "6/6"
        examination["acuity_left"] = dice.one_of(Acuity).value if dice.chance(60) else "6/6"
    if dice.chance(40):
        examination["versions"] = _versions(dice)
    if dice.chance(35):
        examination["previous_operations"] = [_previous(dice) for _ in range(1 + dice.below(3))]
    if dice.chance(20):
        examination["note"] = "Doppelbilder beim Lesen; höflich, müde.\nΔ wechselnd."
    return examination


def _readings(dice: Dice, horizontal_pd: float) -> list[dict[str, Any]]:
    correction = Correction.WITH if dice.chance(80) else Correction.WITHOUT
    readings = [_reading(Gaze.PRIMARY, Range.DISTANCE, correction, horizontal_pd, _vertical(dice))]
    if dice.chance(60):
        readings.append(_reading(Gaze.PRIMARY, Range.NEAR, correction, _near(dice, horizontal_pd), _vertical(dice)))
    if dice.chance(30):
        other = Correction.WITHOUT if correction is Correction.WITH else Correction.WITH
        readings.append(_reading(Gaze.PRIMARY, Range.DISTANCE, other, _near(dice, horizontal_pd), None))
    spread = 20 if dice.chance(30) else 6
    gazes = list(Gaze)[1:5] if dice.chance(60) else list(Gaze)[1:]
    if dice.chance(50):
        for gaze in gazes:
            shift = dice.below(2 * spread + 1) - spread
            readings.append(_reading(gaze, Range.DISTANCE, correction, _held(horizontal_pd + shift), _vertical(dice)))
    return readings


def _reading(
    gaze: Gaze, at: Range, correction: Correction, horizontal_pd: float, vertical_pd: float | None
) -> dict[str, Any]:
    reading: dict[str, Any] = {"gaze": gaze.value, "range": at.value, "correction": correction.value}
    reading["horizontal_pd"] = horizontal_pd
    if vertical_pd is not None:
        reading["vertical_pd"] = vertical_pd
    return reading


def _near(dice: Dice, horizontal_pd: float) -> float:
    return _held(horizontal_pd + dice.below(61) - 30)


def _held(horizontal_pd: float) -> float:
    return round(max(-150, min(150, horizontal_pd)), 1)


def _vertical(dice: Dice) -> float | None:
    return dice.below(37) - 18 if dice.chance(25) else None


def _versions(dice: Dice) -> list[dict[str, Any]]:
    pairs = [(eye, muscle) for eye in EYES for muscle in MUSCLES if dice.chance(30)]
    return [{"eye": eye, "muscle": muscle, "grade": dice.below(9) - 4} for eye, muscle in pairs]


def _previous(dice: Dice) -> dict[str, Any]:
    previous: dict[str, Any] = {
        "eye": dice.one_of(EYES),
        "muscle": dice.one_of(HORIZONTAL_MUSCLES if dice.chance(70) else MUSCLES),
        "operation": dice.one_of(PastOperation).value,
    }
    if dice.chance(60):
        previous["mm"] = dice.below(17) / 2
    if dice.chance(60):
        previous["year"] = 1960 + dice.below(66)
    return previous


def _changes(dice: Dice, horizontal_pd: float) -> list[dict[str, Any]]:
    recessed, resected = HORIZONTAL_MUSCLES if horizontal_pd > 0 else HORIZONTAL_MUSCLES[::-1]
    eye = dice.one_of(EYES)
    option, moves = dice.one_of(
        (
            (f"recess-both-{recessed.lower()}", [("right", recessed), ("left", recessed)]),
            (f"resect-both-{resected.lower()}", [("left", resected)]),
            (f"recess-{recessed.lower()}-resect-{resected.lower()}-{eye}", [(eye, recessed), (eye, resected)]),
            (f"recess-{recessed.lower()}-{eye}", [(eye, recessed)]),
        )
    )
    changes = []
    for moved_eye, muscle in moves:
        mm = (2 + dice.below(43)) / 4
        changes.append({"option": option, "eye": moved_eye, "muscle": muscle, "mm": mm})
    return changes
