"""What a whole examination and a whole case hold beside the plain readings; drawn by the same dice."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from planner.records.case import Aim
from planner.records.diagnosis import Breaker, Diagnosis, Presence
from planner.records.examination import Constancy, Range
from planner.records.motility import Chin, Pull, Side
from planner.records.technique import Arrangement, Condition, Held, Material, Method
from tests.planner.dice import Dice

EYES = ("right", "left")
MUSCLES = ("MR", "LR", "SR", "IR", "SO", "IO")
AIMED_AT = {Aim.AFTER_PATCHING: "after patching", Aim.PRISM_ADAPTED: "prism adapted"}


def beside_the_readings(dice: Dice) -> dict[str, Any]:
    """Optional fields of an examination, each in some."""
    return {name: drawn(dice) for name, (percent, drawn) in OPTIONAL.items() if dice.chance(percent)}


def more_readings(dice: Dice, readings: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The readings, some by other methods or prisms, with repeats, conditions and near gazes beside them."""
    target = readings[0]
    if dice.chance(25):
        target["technique"] = _prisms(dice, target["horizontal_pd"])
    more = []
    if dice.chance(25):
        for repeat in range(2, 3 + dice.below(3)):
            again = {name: target[name] for name in ("gaze", "range", "correction")} | {"repeat": repeat}
            method = dice.one_of(Method).value if dice.chance(40) else Method.PRISM_COVER.value
            more.append(again | {"method": method, "horizontal_pd": _held(target["horizontal_pd"], dice.below(15) - 7)})
    for condition in Condition:
        if condition is not Condition.PLAIN and dice.chance(15):
            at = dice.one_of(Range).value
            shift = dice.below(21) - 5
            more.append(target | {"range": at, "condition": condition.value} | _shifted(target, shift))
    if dice.chance(12):
        more.append(target | {"gaze": dice.one_of(("up", "down")), "range": "near"} | _shifted(target, dice.below(25)))
    for each in more:
        each.pop("technique", None)
    return readings + more


def wanted(dice: Dice, examination: dict[str, Any]) -> dict[str, Any]:
    """Optional fields of a case."""
    case: dict[str, Any] = {}
    target = examination["readings"][0]
    taken = {(each["range"], each.get("condition", "plain")) for each in examination["readings"]}
    aims = [aim for aim, condition in AIMED_AT.items() if ("distance", condition) in taken]
    aims += [Aim.NEAR] if ("near", "plain") in taken else []
    if (aims and dice.chance(50)) or dice.chance(1):
        case["aim"] = (dice.one_of(aims) if aims else Aim.NEAR).value
    intermittent_exo = examination.get("constancy") == "intermittent" and target["horizontal_pd"] < 0
    if (intermittent_exo and dice.chance(60)) or dice.chance(1):
        case["overcorrection_pd"] = dice.below(16)
    return case


def _prisms(dice: Dice, horizontal_pd: float) -> dict[str, Any]:
    prisms: dict[str, Any] = {"material": dice.one_of(Material).value, "held": dice.one_of(Held).value}
    if abs(horizontal_pd) > 20 and dice.chance(40):
        arrangement = Arrangement.SPLIT if dice.chance(80) else Arrangement.STACKED
        prisms |= {"arrangement": arrangement.value, "horizontal_second_pd": round(abs(horizontal_pd) / 2, 1)}
    if dice.chance(20):
        prisms["prism_from_cornea_mm"] = dice.below(60)
    return prisms


def _head_posture(dice: Dice) -> dict[str, Any]:
    posture: dict[str, Any] = {}
    for name, ways in (("turn", Side), ("tilt", Side), ("chin", Chin)):
        if dice.chance(50):
            posture[name] = dice.one_of(ways).value
            if dice.chance(60):
                posture[f"{name}_deg"] = dice.below(41)
    return posture or {"chin": "up"}


def _muscles(dice: Dice, percent: int) -> list[dict[str, Any]]:
    return [{"eye": eye, "muscle": muscle} for eye in EYES for muscle in MUSCLES if dice.chance(percent)]


def _shifted(target: dict[str, Any], shift_pd: float) -> dict[str, Any]:
    return {"horizontal_pd": _held(target["horizontal_pd"], shift_pd)}


def _held(horizontal_pd: float, shift_pd: float) -> float:
    return round(max(-150, min(150, horizontal_pd + shift_pd)), 1)


def _tested(dice: Dice, percent: int, name: str, results: Any) -> list[dict[str, Any]]:
    return [each | {name: dice.one_of(results)} for each in _muscles(dice, percent)]


def _conditions(dice: Dice) -> list[dict[str, Any]]:
    breakers = [breaker.value for breaker in Breaker if dice.chance(30)]
    return [{"breaker": each, "presence": dice.one_of(Presence).value} for each in breakers]


def _diagnoses(dice: Dice) -> list[dict[str, Any]]:
    found = dict.fromkeys((dice.one_of(Diagnosis).value, dice.one_of((None, *EYES))) for _ in range(2))
    return [{"diagnosis": diagnosis, "eye": eye} for diagnosis, eye in found]


def _lens(dice: Dice) -> float:
    return (dice.below(41) - 20) / 2


def _axial_length(dice: Dice) -> float:
    return 18 + dice.below(110) / 10


def _drift(dice: Dice) -> float:
    return dice.below(51) / 2


def _torsion(dice: Dice) -> float:
    return dice.below(31) - 8


OPTIONAL: dict[str, tuple[int, Callable[[Dice], Any]]] = {
    "spectacles_right_d": (30, _lens),
    "spectacles_left_d": (30, _lens),
    "pupil_distance_mm": (40, lambda dice: 45 + dice.below(60) / 2),
    "axial_length_right_mm": (20, _axial_length),
    "axial_length_left_mm": (20, _axial_length),
    "constancy": (50, lambda dice: dice.one_of(Constancy).value),
    "excyclotorsion_right_deg": (25, _torsion),
    "excyclotorsion_left_deg": (25, _torsion),
    "excyclotorsion_down_deg": (20, lambda dice: dice.below(41) - 8),
    "dvd_right_pd": (20, _drift),
    "dvd_left_pd": (20, _drift),
    "head_posture": (25, _head_posture),
    "ductions": (25, lambda dice: _tested(dice, 15, "grade", range(-4, 1))),
    "forced_ductions": (20, lambda dice: _tested(dice, 12, "result", [pull.value for pull in Pull])),
    "conditions": (25, _conditions),
    "diagnoses": (30, _diagnoses),
}
"""What is drawn, and in how many per cent of examinations."""
