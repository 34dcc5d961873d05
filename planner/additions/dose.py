"""Doses of the additions: some from a slope in prism dioptres per millimetre, some without any figure."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.dosing import rounding
from planner.dosing.place import place
from planner.dosing.recipe import Move
from planner.dosing.rounding import to_half_mm
from planner.dosing.setting import Setting, dose
from planner.figures import mm, pd
from planner.provenance import Provenance
from planner.situation import Situation
from planner.tables import Form
from planner.thresholds import exceeds, same
from planner.values.option import Dose, Operation
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Slope:
    """How much a millimetre on one muscle corrects, and the standard deviation of that where it is published."""

    pd_per_mm: float
    sd_pd_per_mm: float | None
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class Wanted:
    """A rectus of an eye to be moved so that it corrects ``share_pd``, up to ``widest_mm``."""

    option: str
    eye: Eye
    muscle: Muscle
    operation: Operation
    share_pd: float
    widest_mm: float
    slope: Slope
    reading: Statement


def is_reached(wanted: Wanted) -> bool:
    """Whether the widest maximum allows as much as is wanted."""
    return not exceeds(_rounded_mm(wanted), wanted.widest_mm)


def graded(situation: Situation, wanted: Wanted) -> Dose:
    """The dose, with the surgeon's own figure where one was set."""
    exact_mm = wanted.share_pd / wanted.slope.pd_per_mm
    rounded_mm = _rounded_mm(wanted)
    steps = [wanted.reading, _by_slope(wanted, exact_mm)]
    if not same(exact_mm, rounded_mm):
        steps.append(_rounding(exact_mm, rounded_mm))
    setting = Setting(
        table_mm=rounded_mm,
        addition=None,
        widest_mm=wanted.widest_mm,
        set_mm=set_mm(situation, wanted.option, wanted.eye, wanted.muscle),
        spent_mm=situation.spent_mm(wanted.eye, wanted.muscle, wanted.operation),
        place=place(situation, wanted.eye, wanted.muscle),
    )
    move = Move(eye=wanted.eye, muscle=wanted.muscle, operation=wanted.operation, form=Form.ONE)
    return dose(move, setting, tuple(steps))


def without_figure(eye: Eye, muscle: Muscle, operation: Operation, *steps: Statement, words: str) -> Dose:
    """An operation that no millimetres belong to; ``words`` say what is done."""
    return Dose(
        eye=eye,
        muscle=muscle,
        operation=operation,
        mm=None,
        table_mm=None,
        changed=False,
        insertion_mm=None,
        limbus_mm=None,
        steps=steps,
        attachment_words=words,
    )


def set_mm(situation: Situation, option: str, eye: Eye, muscle: Muscle) -> float | None:
    """What the surgeon set for a muscle of an option, if anything."""
    wanted = (option, eye, muscle)
    changes = situation.case.changes
    return next((each.mm for each in changes if (each.option, each.eye, each.muscle) == wanted), None)


def _rounded_mm(wanted: Wanted) -> float:
    return to_half_mm(wanted.share_pd / wanted.slope.pd_per_mm)


def _by_slope(wanted: Wanted, exact_mm: float) -> Statement:
    slope_pd = wanted.slope.pd_per_mm
    return Statement(
        code="slope",
        text=f"{pd(wanted.share_pd)} at {slope_pd:g} Δ per mm: {mm(exact_mm)}.",
        provenance=wanted.slope.provenance,
        facts={"share_pd": round(wanted.share_pd, 2), "pd_per_mm": slope_pd, "mm": round(exact_mm, 4)},
    )


def _rounding(exact_mm: float, rounded_mm: float) -> Statement:
    return Statement(
        code="rounding",
        text=f"{mm(exact_mm)} is rounded to {mm(rounded_mm)}.",
        provenance=rounding.PROVENANCE,
        facts={"exact_mm": round(exact_mm, 4), "mm": rounded_mm},
    )
