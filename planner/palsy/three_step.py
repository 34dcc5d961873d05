"""The three-step test: higher eye, gaze and head tilt in which it is worse, and the muscle that explains all three."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from planner.palsy.muscles import WEAK_MUSCLE, WeakMuscle, provenance_of
from planner.palsy.steps import Step, hyper_step, side_step
from planner.precision.strength import weakest
from planner.provenance import Mark, Provenance
from planner.records.diagnosis import Breaker, Presence
from planner.records.examination import Range
from planner.values.statement import Level, Notice, Statement, Strength

KUSHNER = Provenance(
    mark=Mark.PUBLISHED,
    source="Kushner, Ophthalmology 1989;96:127-32: what has a positive tilt test and is no palsy of one muscle",
)
SENSITIVITY = Provenance(
    mark=Mark.PUBLISHED,
    source="Manchandia & Demer, J AAPOS 2014;18:567-71: 35 of 50 SO palsies proven by MRI fulfil all steps",
)
SENSITIVITY_PERCENT = 70.0


@dataclass(frozen=True, kw_only=True)
class Verticals:
    """Vertical deviations, right hyper +, None where not measured; right and left are the patient's."""

    primary_pd: float | None = None
    right_pd: float | None = None
    left_pd: float | None = None
    tilt_right_pd: float | None = None
    tilt_left_pd: float | None = None
    range: Range = Range.DISTANCE


@dataclass(frozen=True, kw_only=True)
class ThreeStep:
    """``candidates`` are all muscles that fit the steps that could be told; ``weak`` is the one left, if it is one.

    ``strength`` is that of the weakest step, and ``cannot tell`` while a condition that breaks the test is present.
    ``to_exclude`` lists the conditions nobody has excluded yet; ``settle`` what to measure, in order.
    """

    hyper: Step
    gaze: Step
    tilt: Step
    candidates: tuple[WeakMuscle, ...]
    weak: WeakMuscle | None
    strength: Strength
    broken_by: tuple[Breaker, ...]
    to_exclude: tuple[Breaker, ...]
    statement: Statement
    notices: tuple[Notice, ...]
    settle: tuple[str, ...]


MEASURE_HYPER = "Measure the vertical deviation in primary position again."
MEASURE_GAZE = "Measure the vertical deviation in right and in left gaze, further out."
MEASURE_TILT = "Measure the vertical deviation with the head tilted to the right and to the left, further over."


def three_step(verticals: Verticals, presence: Mapping[Breaker, Presence] | None = None) -> ThreeStep:
    """The test on these verticals; ``presence`` says what is known of the conditions that break it."""
    at = verticals.range
    hyper = hyper_step(verticals.primary_pd, at, MEASURE_HYPER)
    gaze = side_step(verticals.right_pd, verticals.left_pd, at, hyper.side, MEASURE_GAZE)
    tilt = side_step(verticals.tilt_right_pd, verticals.tilt_left_pd, at, hyper.side, MEASURE_TILT)
    candidates = tuple(weak for sides, weak in WEAK_MUSCLE.items() if _fits(sides, (hyper.side, gaze.side, tilt.side)))
    known = presence or {}
    broken_by = tuple(breaker for breaker in Breaker if known.get(breaker) is Presence.PRESENT)
    steps = (hyper, gaze, tilt)
    weak = candidates[0] if len(candidates) == 1 and not broken_by else None
    return ThreeStep(
        hyper=hyper,
        gaze=gaze,
        tilt=tilt,
        candidates=candidates,
        weak=weak,
        strength=Strength.CANNOT_TELL if broken_by else weakest(*(step.strength for step in steps)),
        broken_by=broken_by,
        to_exclude=tuple(breaker for breaker in Breaker if known.get(breaker, Presence.UNKNOWN) is Presence.UNKNOWN),
        statement=_statement(weak, candidates, broken_by),
        notices=tuple(_notices(weak, broken_by)),
        settle=tuple(step.settle for step in steps if step.settle),
    )


def _fits(sides: tuple[object, ...], told: tuple[object, ...]) -> bool:
    return all(answer is None or answer is side for side, answer in zip(sides, told, strict=True))


def _statement(
    weak: WeakMuscle | None, candidates: tuple[WeakMuscle, ...], broken_by: tuple[Breaker, ...]
) -> Statement:
    names = ", ".join(candidate.words for candidate in candidates)
    if broken_by:
        conditions = ", ".join(breaker.value for breaker in broken_by)
        text = f"The three-step test is not valid with: {conditions}."
    elif weak:
        text = f"The three steps point to a palsy of the {weak.words}, if it is one muscle."
    else:
        text = f"The three steps leave {len(candidates)} muscles: {names}."
    return Statement(code="three_step", text=text, provenance=provenance_of(weak), facts={"candidates": names})


def _notices(weak: WeakMuscle | None, broken_by: tuple[Breaker, ...]) -> list[Notice]:
    if broken_by:
        return [
            Notice(
                level=Level.CAUTION,
                code="three_step_not_valid",
                text="Do not choose a muscle by the three-step test here.",
                provenance=KUSHNER,
                facts={"conditions": ", ".join(breaker.value for breaker in broken_by)},
            )
        ]
    if weak is None:
        return []
    return [
        Notice(
            level=Level.NOTE,
            code="three_step_sensitivity",
            text=f"Of superior oblique palsies proven by imaging {SENSITIVITY_PERCENT:g} % fulfil all three steps.",
            provenance=SENSITIVITY,
            facts={"sensitivity_percent": SENSITIVITY_PERCENT},
        )
    ]
