"""The inferior oblique put before, at or behind the insertion of the inferior rectus: five places, each measured.

Alone it answers a hyper from the first place on, at the nearest one, the lesser of two equally near. Beyond 15 Δ it
shares the work with the recession of the other eye's inferior rectus, which answers what it leaves.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.additions.dose import Wanted, graded, is_reached, without_figure
from planner.additions.limits import beyond
from planner.additions.obliques.grading import FIFTEEN, OVERACTION
from planner.additions.overaction import overacts
from planner.additions.part import Part
from planner.additions.sources import INFERIOR_BY_PLACE
from planner.additions.vertical.hyper import Effect, Hyper, expected, hyper
from planner.additions.vertical.recti import ONE_MUSCLE_PD, effect
from planner.additions.vertical.slopes import slope_of
from planner.anatomy import Eye, Muscle
from planner.dosing.draft import LARGEST_LAST_ROW_RESIDUAL_PD
from planner.figures import pd
from planner.maxima import MAXIMA
from planner.options.reasons.reason import common_practice, speaks_against, speaks_for
from planner.prediction import SPREADS, Spread
from planner.rules.vertical import SMALLEST_OPERATION_PD
from planner.situation import Situation
from planner.thresholds import exceeds, reaches
from planner.values.option import Answers, Dose, Family, Operation
from planner.values.statement import Level, Notice, Statement

LIMITS_ELEVATION = common_practice("one inferior oblique brought forward holds its eye down in up-gaze")


@dataclass(frozen=True, kw_only=True)
class Place:
    """Where the muscle is put, against the insertion of the inferior rectus, and what that corrected."""

    words: str
    spread: Spread


PLACES = (
    Place(words="2 mm behind the insertion of the inferior rectus", spread=SPREADS["io-transpose-2-behind"]),
    Place(words="1 mm behind the insertion of the inferior rectus", spread=SPREADS["io-transpose-1-behind"]),
    Place(words="level with the insertion of the inferior rectus", spread=SPREADS["io-transpose-level"]),
    Place(words="1 mm ahead of the insertion of the inferior rectus", spread=SPREADS["io-transpose-1-ahead"]),
    Place(words="2 mm ahead of the insertion of the inferior rectus", spread=SPREADS["io-transpose-2-ahead"]),
)
LEVEL_PLACE = 2


def parts(situation: Situation) -> Iterator[Part]:
    """Alone, and with a rectus beyond 15 Δ, for the higher eye if its inferior oblique overacts."""
    found = hyper(situation)
    if found is None or not overacts(situation, found.higher, Muscle.IO):
        return
    if reaches(found.size_pd, PLACES[0].spread.mean):
        yield _alone(found)
    if exceeds(found.size_pd, ONE_MUSCLE_PD):
        yield _with_a_rectus(situation, found)


def nearest(size_pd: float) -> Place:
    """The place whose correction is nearest; of two equally near the lesser."""
    return min(PLACES, key=lambda each: (round(abs(each.spread.mean - size_pd), 6), each.spread.mean))


def shared(size_pd: float) -> Place:
    """The furthest place, level at most, that leaves enough for the least useful recession of a rectus."""
    leaves = [each for each in PLACES[: LEVEL_PLACE + 1] if reaches(size_pd - each.spread.mean, SMALLEST_OPERATION_PD)]
    return leaves[-1] if leaves else PLACES[0]


def _alone(found: Hyper) -> Part:
    place = nearest(found.size_pd)
    last = PLACES[-1].spread.mean
    reached = not exceeds(found.size_pd - last, LARGEST_LAST_ROW_RESIDUAL_PD)
    more = exceeds(found.size_pd, ONE_MUSCLE_PD)
    text = f"{pd(found.size_pd)} are more than one muscle is usually asked for."
    return Part(
        id=f"anteriorise-io-{found.higher}",
        family=Family.OBLIQUES,
        answers=Answers.VERTICAL,
        table=INFERIOR_BY_PLACE,
        title=f"Bring the {found.higher} inferior oblique forward",
        doses=(_dose(found, place),) if reached else (),
        expected=(expected(found, (_effect(place),)),) if reached else (),
        reasons_for=(_overacts(found.higher),),
        reasons_against=(speaks_against("more_than_one_muscle", text, FIFTEEN, hyper_pd=found.size_pd).statement,)
        if more
        else (),
        notices=(*found.nature.notices, *_cautions(found.higher, place)) if reached else (_out_of_reach(found, last),),
    )


def _with_a_rectus(situation: Situation, found: Hyper) -> Part:
    place = shared(found.size_pd)
    id_ = f"anteriorise-io-{found.higher}-recess-ir-{found.lower}"
    wanted = Wanted(
        option=id_,
        eye=found.lower,
        muscle=Muscle.IR,
        operation=Operation.RECESS,
        share_pd=found.size_pd - place.spread.mean,
        widest_mm=MAXIMA[Muscle.IR, Operation.RECESS].widest_mm,
        slope=slope_of(situation, found.lower, Muscle.IR, Operation.RECESS),
        reading=found.reading,
    )
    reached = is_reached(wanted)
    doses: tuple[Dose, ...] = (_dose(found, place), graded(situation, wanted)) if reached else ()
    return Part(
        id=id_,
        family=Family.OBLIQUES,
        answers=Answers.VERTICAL,
        table=INFERIOR_BY_PLACE,
        title=f"Bring the {found.higher} inferior oblique forward and recess the {found.lower} inferior rectus",
        doses=doses,
        expected=(expected(found, (_effect(place), effect(wanted.slope, doses[1]))),) if reached else (),
        reasons_for=(
            _overacts(found.higher),
            speaks_for("two_muscles", "Two muscles share a large deviation.", FIFTEEN).statement,
        ),
        notices=(*found.nature.notices, *_cautions(found.higher, place)) if reached else (beyond(wanted),),
    )


def _dose(found: Hyper, place: Place) -> Dose:
    said = Statement(
        code="place",
        text=f"{place.words[0].upper()}{place.words[1:]}: {pd(place.spread.mean)}, SD {place.spread.sd:g}.",
        provenance=place.spread.provenance,
        facts={"mean_pd": place.spread.mean, "sd_pd": place.spread.sd},
    )
    return without_figure(
        found.higher, Muscle.IO, Operation.ANTERIORISE, found.reading, said, words=f"to {place.words}"
    )


def _effect(place: Place) -> Effect:
    spread = place.spread
    return Effect(correction_pd=spread.mean, spread_pd=spread.sd, provenance=spread.provenance)


def _overacts(eye: Eye) -> Statement:
    text = f"The {eye} inferior oblique overacts."
    return speaks_for("oblique_overacts", text, OVERACTION, eye=eye.value).statement


def _cautions(eye: Eye, place: Place) -> Iterator[Notice]:
    yield Notice(
        code=f"may_limit_elevation-{eye}",
        text=f"Brought forward on one side, the inferior oblique may limit the {eye} eye in up-gaze.",
        provenance=LIMITS_ELEVATION,
        facts={"eye": eye.value},
        level=Level.CAUTION,
    )
    if place is PLACES[-1]:
        yield Notice(
            code=f"wide_spread-{eye}",
            text=f"This place had the widest spread of all: standard deviation {pd(place.spread.sd)}.",
            provenance=place.spread.provenance,
            facts={"sd_pd": place.spread.sd},
            level=Level.CAUTION,
        )


def _out_of_reach(found: Hyper, last_pd: float) -> Notice:
    return Notice(
        code="beyond_last_place",
        text=f"The furthest place corrected {pd(last_pd)}, which leaves more than {pd(LARGEST_LAST_ROW_RESIDUAL_PD)}.",
        provenance=PLACES[-1].spread.provenance,
        facts={"hyper_pd": found.size_pd, "last_pd": last_pd},
        level=Level.STOP,
    )
