"""Vertical recti: one for up to 15 Δ, one or two beyond.

    the higher eye    recess its superior rectus, resect its inferior
    the lower eye     recess its inferior rectus, resect its superior

Two muscles share the deviation equally. Where a dose would pass the widest maximum there is none.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.additions.dose import Slope, Wanted, graded, is_reached
from planner.additions.limits import beyond
from planner.additions.part import Part
from planner.additions.sources import VERTICAL_RECTI
from planner.additions.vertical import field
from planner.additions.vertical.hyper import Effect, Hyper, expected, hyper
from planner.additions.vertical.slopes import slope_of
from planner.anatomy import Eye, Muscle
from planner.figures import pd
from planner.maxima import MAXIMA
from planner.options.reasons.reason import Reason, common_practice, speaks_against, speaks_for
from planner.options.reasons.reversible import REVERSIBLE
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Answers, Dose, Expected, Family, Operation
from planner.values.statement import Level, Notice

ONE_MUSCLE_PD = 15.0
FIFTEEN = common_practice("up to 15 Δ in primary position one muscle, more two")
LIDS = common_practice("the lids follow a vertical rectus that is moved far")


@dataclass(frozen=True, kw_only=True)
class Step:
    """One rectus that lowers the higher eye or lifts the lower one."""

    eye: Eye
    muscle: Muscle
    operation: Operation

    @property
    def id(self) -> str:
        """For example ``recess-sr-right``."""
        return f"{self.operation}-{self.muscle.lower()}-{self.eye}"

    @property
    def words(self) -> str:
        """For example ``recess the right superior rectus``."""
        return f"{self.operation.verb} the {self.eye} {self.muscle.words}"


def parts(situation: Situation) -> Iterator[Part]:
    """One rectus, and two beyond 15 Δ."""
    found = hyper(situation)
    if found is None:
        return
    recess_higher = Step(eye=found.higher, muscle=Muscle.SR, operation=Operation.RECESS)
    resect_higher = Step(eye=found.higher, muscle=Muscle.IR, operation=Operation.RESECT)
    recess_lower = Step(eye=found.lower, muscle=Muscle.IR, operation=Operation.RECESS)
    resect_lower = Step(eye=found.lower, muscle=Muscle.SR, operation=Operation.RESECT)
    for step in (recess_higher, recess_lower, resect_higher, resect_lower):
        yield _part(situation, found, (step,))
    if exceeds(found.size_pd, ONE_MUSCLE_PD):
        for pair in ((recess_higher, recess_lower), (recess_higher, resect_higher), (recess_lower, resect_lower)):
            yield _part(situation, found, pair)


def _part(situation: Situation, found: Hyper, taken: tuple[Step, ...]) -> Part:
    id_ = "-".join(step.id for step in taken)
    wanted = tuple(_wanted(situation, found, id_, step, found.size_pd / len(taken)) for step in taken)
    reached = all(is_reached(each) for each in wanted)
    doses = tuple(graded(situation, each) for each in wanted) if reached else ()
    words = " and ".join(step.words for step in taken)
    said = tuple(_reasons(situation, found, taken))
    return Part(
        id=id_,
        family=Family.VERTICAL_RECTI,
        answers=Answers.VERTICAL,
        table=VERTICAL_RECTI,
        title=f"{words[0].upper()}{words[1:]}",
        doses=doses,
        expected=_expected(found, wanted, doses),
        reasons_for=tuple(reason.statement for reason in said if reason.speaks_for),
        reasons_against=tuple(reason.statement for reason in said if not reason.speaks_for),
        notices=(*found.nature.notices, *(_lids(dose) for dose in doses))
        if reached
        else tuple(beyond(each) for each in wanted if not is_reached(each)),
    )


def _wanted(situation: Situation, found: Hyper, id_: str, step: Step, share_pd: float) -> Wanted:
    return Wanted(
        option=id_,
        eye=step.eye,
        muscle=step.muscle,
        operation=step.operation,
        share_pd=share_pd,
        widest_mm=MAXIMA[step.muscle, step.operation].widest_mm,
        slope=slope_of(situation, step.eye, step.muscle, step.operation),
        reading=found.reading,
    )


def _expected(found: Hyper, wanted: tuple[Wanted, ...], doses: tuple[Dose, ...]) -> tuple[Expected, ...]:
    effects = tuple(effect(each.slope, dose) for each, dose in zip(wanted, doses, strict=False))
    return (expected(found, effects),) if effects else ()


def effect(slope: Slope, dose: Dose) -> Effect:
    """What a dose is expected to correct."""
    per_mm = slope.sd_pd_per_mm
    return Effect(
        correction_pd=slope.pd_per_mm * dose.figure_mm,
        spread_pd=None if per_mm is None else per_mm * dose.figure_mm,
        provenance=slope.provenance,
    )


def _reasons(situation: Situation, found: Hyper, taken: tuple[Step, ...]) -> Iterator[Reason]:
    if all(step.operation is Operation.RECESS for step in taken):
        yield speaks_for("recessions_only", "Recessions only: a second operation can take them back.", REVERSIBLE)
    else:
        yield speaks_against("resection", "A resection cannot be undone.", REVERSIBLE)
    if len(taken) == 1:
        yield from field.reasons(situation, found, taken[0].muscle)
        if exceeds(found.size_pd, ONE_MUSCLE_PD):
            text = f"{pd(found.size_pd)} are more than one muscle is usually asked for."
            yield speaks_against("more_than_one_muscle", text, FIFTEEN, hyper_pd=found.size_pd)


def _lids(dose: Dose) -> Notice:
    down = (dose.muscle is Muscle.IR) is (dose.operation is Operation.RECESS)
    lid = "lower" if dose.muscle is Muscle.IR else "upper"
    return Notice(
        code=f"lid_follows-{dose.eye}-{dose.muscle.lower()}",
        text=f"{dose.eye.capitalize()} eye: the {lid} lid may be drawn {'down' if down else 'up'}; tell the patient.",
        provenance=LIDS,
        facts={"eye": dose.eye.value},
        level=Level.NOTE,
    )
