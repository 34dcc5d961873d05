"""What keeps a plan from being signed, as faults."""

from __future__ import annotations

from collections.abc import Iterator

from planner.errors import Fault
from planner.records.plan import DrawnMuscle, Plan
from planner.signing.drawing import compare_drawing
from planner.values.option import Option
from planner.values.statement import Level


def hindrances(plan: Plan, drawn: tuple[DrawnMuscle, ...], acknowledged: tuple[str, ...]) -> tuple[Fault, ...]:
    """Nothing if ``plan`` may be signed; else every reason why not, the gravest first."""
    option = plan.option
    return (
        *_stops(option),
        *_emptiness(option),
        *_differences(option, drawn),
        *_silences(option, acknowledged),
        *_strangers(option, acknowledged),
    )


def _stops(option: Option) -> Iterator[Fault]:
    for notice in option.notices:
        if notice.level is Level.STOP:
            yield Fault(code="plan_has_stop", text=notice.text, field="plan.option.notices", value=notice.code)


def _emptiness(option: Option) -> Iterator[Fault]:
    if not option.doses:
        yield Fault(
            code="nothing_to_operate",
            text="The plan names no muscle.",
            field="plan.option.doses",
            allowed="at least one muscle",
        )


def _differences(option: Option, drawn: tuple[DrawnMuscle, ...]) -> Iterator[Fault]:
    comparison = compare_drawing(option, drawn)
    for missing in comparison.missing:
        yield Fault(
            code="drawing_differs",
            text=f"The plan has this, the drawing has not: {_words(missing)}.",
            field="drawn",
            allowed="the muscles and operations of the plan",
        )
    for unexpected in comparison.unexpected:
        yield Fault(
            code="drawing_differs",
            text=f"The drawing has this, the plan has not: {_words(unexpected)}.",
            field="drawn",
            value=_words(unexpected),
            allowed="the muscles and operations of the plan",
        )


def _silences(option: Option, acknowledged: tuple[str, ...]) -> Iterator[Fault]:
    for notice in option.notices:
        if notice.level is Level.CAUTION and notice.code not in acknowledged:
            yield Fault(
                code="caution_not_acknowledged",
                text=f"This caution was not acknowledged: {notice.text}",
                field="acknowledged",
                allowed=notice.code,
            )


def _strangers(option: Option, acknowledged: tuple[str, ...]) -> Iterator[Fault]:
    codes = {notice.code for notice in option.notices if notice.level is Level.CAUTION}
    for code in acknowledged:
        if code not in codes:
            yield Fault(
                code="caution_not_in_plan",
                text="A caution was acknowledged that this plan does not carry.",
                field="acknowledged",
                value=code,
                allowed=", ".join(sorted(codes)),
            )


def _words(drawn: DrawnMuscle) -> str:
    moved = f", moved {drawn.offset}" if drawn.offset else ""
    return f"{drawn.operation.verb} the {drawn.eye.value} {drawn.muscle.words}{moved}"
