"""The alignment over time, against what the signed plan expected of it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.disclaimer import DISCLAIMER
from planner.followup.aftercare import Aftercare, Visited
from planner.followup.drawing import pictures
from planner.followup.expected import expected
from planner.followup.warnings import standing_warnings, warnings_of
from planner.followup.warnings.infection import window
from planner.operation.differences import AS_PLANNED, difference
from planner.precision.limits import Direction
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.thresholds import exceeds
from planner.values.follow_up import Band, Course, Kept, Line, Point, Ranges
from planner.values.statement import Statement

SIGNED = Provenance(mark=Mark.COMPUTED, source="the expectation of the signed plan, not worked out again")
DONE = Provenance(mark=Mark.HOUSE_RULE, source="what was expected of the plan is not expected of another operation")
READ = Provenance(
    mark=Mark.MEASURED, source="the figures that were read when the suture was adjusted, as they were read"
)
DRAWN = Provenance(mark=Mark.HOUSE_RULE, source="how a course is drawn here")
SAME_WAY = Provenance(mark=Mark.HOUSE_RULE, source="a visit is compared with the reading that the plan was made from")


def course(care: Aftercare) -> Course:
    """Every visit in its place, with what must not wait."""
    horizontal, vertical = (_ranges(care, direction) for direction in (Direction.HORIZONTAL, Direction.VERTICAL))
    return Course(
        operated_on=care.operation.operated_on,
        horizontal=horizontal,
        vertical=vertical,
        visits=tuple(_kept(care, visited) for visited in care.visits),
        warnings=standing_warnings(care, care.visits),
        notices=tuple(window(care)),
        statements=tuple(_statements(care)),
        pictures=pictures(horizontal, vertical),
        disclaimer=DISCLAIMER,
    )


def _ranges(care: Aftercare, direction: Direction) -> Ranges:
    return Ranges(distance=_line(care, direction, Range.DISTANCE), near=_line(care, direction, Range.NEAR))


def _line(care: Aftercare, direction: Direction, at: Range) -> Line:
    before = care.before.figure(direction, at)
    band = expected(care.plan, direction, at)
    points = [*_adjusted(care, direction, at, band), *_visited(care, direction, at, band)]
    return Line(
        before_pd=before.value_pd if before else None,
        expected=band,
        points=tuple(sorted(points, key=lambda point: point.on)),
    )


def _visited(care: Aftercare, direction: Direction, at: Range, band: Band | None) -> Iterator[Point]:
    for visited in care.visits:
        figure = visited.alignment.figure(direction, at)
        if figure is not None:
            yield Point(
                on=visited.follow_up.seen_on,
                days_after=visited.days_after,
                at=visited.follow_up.visit,
                value_pd=figure.value_pd,
                limits_pd=figure.limits.half_width_pd,
                is_inside=_is_inside(figure.value_pd, band),
                other_correction=figure.reading.correction is not care.before.correction,
            )


def _adjusted(care: Aftercare, direction: Direction, at: Range, band: Band | None) -> Iterator[Point]:
    """Before and after an adjustment; what is read before it is not yet what the operation leaves."""
    if care.adjustment is None:
        return
    on = care.adjustment.adjusted_at[:10]
    for words, alignments in (
        ("Before adjustment", care.adjustment.before),
        ("After adjustment", care.adjustment.after),
    ):
        for each in alignments:
            value_pd = each.horizontal_pd if direction is Direction.HORIZONTAL else each.vertical_pd
            if each.range is at and value_pd is not None:
                yield Point(
                    on=on,
                    days_after=care.days_after(on),
                    at=words,
                    value_pd=value_pd,
                    limits_pd=None,
                    is_inside=_is_inside(value_pd, band),
                    other_correction=False,
                )


def _is_inside(value_pd: float, band: Band | None) -> bool | None:
    if band is None:
        return None
    return not (exceeds(value_pd, band.high_pd) or exceeds(band.low_pd, value_pd))


def _kept(care: Aftercare, visited: Visited) -> Kept:
    return Kept(
        visit=visited.follow_up.visit,
        seen_on=visited.follow_up.seen_on,
        days_after=visited.days_after,
        warnings=warnings_of(care, visited),
        statements=tuple(_of_visit(care, visited)),
    )


def _of_visit(care: Aftercare, visited: Visited) -> Iterator[Statement]:
    if visited.refusal is not None:
        fault = visited.refusal.faults[0]
        text = f"The readings of this visit cannot be taken as they are: {fault.text}"
        yield Statement(code="readings_refused", text=text, provenance=SAME_WAY, facts={"field": fault.field})
    figures = [visited.alignment.figure(direction, at) for direction in Direction for at in Range]
    if any(figure is not None and figure.reading.correction is not care.before.correction for figure in figures):
        text = f"Not all was measured {care.before.correction} correction, as the plan was: compare with care."
        yield Statement(code="other_correction", text=text, provenance=SAME_WAY, facts={})


def _statements(care: Aftercare) -> Iterator[Statement]:
    if care.plan.option.prediction is not None or care.plan.option.expected:
        text = "The band is what the signed plan expected, 95 of 100; it holds the error of the reading before surgery."
        yield Statement(code="band_of_plan", text=text, provenance=SIGNED, facts={})
    if any(difference(muscle).code != AS_PLANNED for muscle in care.operation.muscles):
        text = "Something else was done than planned: the band is of the plan and not of what was done."
        yield Statement(code="not_as_planned", text=text, provenance=DONE, facts={})
    text = "A bar is the 95 % error of a reading. Days are drawn by their root, so that the first ones have room."
    yield Statement(code="drawn_so", text=text, provenance=DRAWN, facts={})
    if care.adjustment is not None:
        moved = "A suture was moved afterwards" if care.adjustment.moved else "The sutures were tied as they were"
        text = f"{moved}; the figures of the adjustment are shown as they were read."
        yield Statement(code="adjusted", text=text, provenance=READ, facts={"moved": float(len(care.adjustment.moved))})
