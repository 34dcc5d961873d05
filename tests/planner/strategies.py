"""Hypothesis strategies for the engine's values.

:func:`values_of` makes any value of a dataclass from its annotations and limits; :func:`cases` makes clinically
possible cases, which is what the engine's promises are about.
"""

from __future__ import annotations

import math
import types
from collections.abc import Mapping
from dataclasses import MISSING, fields, is_dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from hypothesis import strategies as st

from planner.anatomy import Eye, Muscle
from planner.limits import AnyOf, IsoDate, IsoMoment, Length, Pattern, Prose, Unique, Within
from planner.records.case import Aim, Case
from planner.records.diagnosis import Diagnosed, Validity
from planner.records.examination import (
    Acuity,
    Constancy,
    Correction,
    Examination,
    FixingEye,
    Gaze,
    PreviousOperation,
    Range,
    Reading,
)
from planner.records.motility import Duction, ForcedDuction, HeadPosture, Version
from planner.records.technique import Arrangement, Condition, Held, Material, Method, Prisms

LARGEST_HELD_PD = 40
LARGEST_BEHIND_SPECTACLES_PD = 100
MEASURED_TOGETHER = (
    tuple((gaze, Range.DISTANCE, Condition.PLAIN) for gaze in (Gaze.UP, Gaze.DOWN)),
    tuple((gaze, Range.DISTANCE, Condition.PLAIN) for gaze in (Gaze.RIGHT, Gaze.LEFT)),
    tuple((gaze, Range.DISTANCE, Condition.PLAIN) for gaze in (Gaze.TILT_RIGHT, Gaze.TILT_LEFT)),
    ((Gaze.PRIMARY, Range.NEAR, Condition.PLAIN),),
    tuple((Gaze.PRIMARY, Range.NEAR, each) for each in Condition),
    tuple((Gaze.PRIMARY, Range.DISTANCE, each) for each in Condition),
)
"""What a clinic measures in one go."""
FORBIDDEN = {"blacklist_categories": ("Cc", "Cs", "Zl", "Zp")}


def values_of(cls: type) -> st.SearchStrategy[Any]:
    """Values of ``cls`` that fit the limits in its annotations, defaults and given values both."""
    hints = get_type_hints(cls, include_extras=True)
    given = {}
    for member in fields(cls):
        if member.name == "schema" and member.default is not MISSING:
            given[member.name] = st.just(member.default)
        else:
            given[member.name] = _values(hints[member.name])
    made = st.builds(cls, **given)
    for rule in getattr(cls, "RULES", ()):
        made = made.filter(lambda value, rule=rule: _keeps(value, rule))
    return made


def _keeps(value: Any, rule: Any) -> bool:
    if isinstance(rule, AnyOf):
        return any(getattr(value, name) is not None for name in rule.fields)
    return getattr(value, rule.field) is None or getattr(value, rule.needs) is not None


def _values(annotation: Any) -> st.SearchStrategy[Any]:
    limits: tuple[Any, ...] = ()
    if get_origin(annotation) is Annotated:
        annotation, *rest = get_args(annotation)
        limits = tuple(rest)
    origin, arguments = get_origin(annotation), get_args(annotation)
    if origin in (Union, types.UnionType):
        return st.one_of([st.none() if each is types.NoneType else _values(each) for each in arguments])
    if origin is tuple:
        return _lists(arguments[0], limits)
    if origin is Mapping:
        return st.dictionaries(_texts(1, 20), st.one_of(_texts(0, 20), _numbers(None)), max_size=3)
    if is_dataclass(annotation):
        return values_of(annotation)
    if issubclass(annotation, StrEnum):
        return st.sampled_from(annotation)
    return _scalars(annotation, limits[0] if limits else None)


def _scalars(annotation: type, limit: Any) -> st.SearchStrategy[Any]:
    match limit:
        case Within() if annotation is int:
            return st.integers(math.ceil(limit.low), math.floor(limit.high))
        case IsoDate():
            return st.dates(date(limit.earliest_year, 1, 1), date(2200, 1, 1)).map(date.isoformat)
        case IsoMoment():
            return st.just("2026-11-25T09:30:00+01:00") | st.just("2026-11-25T08:30:00.125Z")
        case Pattern():
            return st.from_regex(limit.regex, fullmatch=True, alphabet=st.characters(codec="ascii"))
        case Length() | Prose():
            return _texts(limit.low, min(limit.high, 60))
    if annotation is bool:
        return st.booleans()
    if annotation is str:
        return _texts(0, 40)
    return st.integers(-1000, 1000) if annotation is int else _numbers(limit)


def _texts(low: int, high: int) -> st.SearchStrategy[str]:
    alphabet = st.characters(**FORBIDDEN)
    return st.text(alphabet, min_size=low, max_size=high).filter(lambda text: text == text.strip())


def _numbers(limit: Within | None) -> st.SearchStrategy[float]:
    low, high = (limit.low, limit.high) if limit else (-1e6, 1e6)
    return st.floats(low, high).map(lambda figure: figure + 0.0)


def _lists(item: Any, limits: tuple[Any, ...]) -> st.SearchStrategy[Any]:
    length = next((limit for limit in limits if isinstance(limit, Length)), Length(0, 3))
    unique = next((limit for limit in limits if isinstance(limit, Unique)), None)
    key = (lambda value: tuple(getattr(value, name) for name in unique.fields)) if unique else None
    most = min(length.high, length.low + 3)
    return st.lists(_values(item), min_size=length.low, max_size=most, unique_by=key).map(tuple)


def cases() -> st.SearchStrategy[Case]:
    """Cases with a deviation to answer, measured as a clinic would; nothing changed by hand."""
    return examinations().flatmap(
        lambda examination: st.builds(
            Case,
            examination=st.just(examination),
            table=st.sampled_from(("wright-after-parks", "classic-parks")),
            born_on=st.none() | st.just("2001-05-17"),
            aim=st.just(Aim.DISTANCE) | st.sampled_from(_aims(examination)),
        )
    )


@st.composite
def examinations(draw: st.DrawFn) -> Examination:
    """Examinations with a horizontal deviation in the primary position at distance: the target, first of the readings.

    Repeats of it and readings elsewhere lie near it. A technique and spectacles are kept for angles that they can have
    been used for, so that nothing is refused.
    """
    correction, angle_pd = draw(st.sampled_from(Correction)), draw(angles())
    vertical_pd = draw(st.none() | st.integers(-20, 20))
    target = Reading(
        gaze=Gaze.PRIMARY,
        range=Range.DISTANCE,
        correction=correction,
        horizontal_pd=angle_pd,
        vertical_pd=None if vertical_pd is None else float(vertical_pd),
        technique=_held(draw(_techniques()), angle_pd),
    )
    methods = draw(st.lists(st.sampled_from(Method), max_size=3))
    again = [
        replace(target, horizontal_pd=draw(_near(angle_pd, 12)), technique=None, method=method, repeat=repeat)
        for repeat, method in enumerate(methods, start=2)
    ]
    somewhere = draw(
        st.lists(st.tuples(st.sampled_from(Gaze), st.sampled_from(Range), st.sampled_from(Condition)), max_size=3)
    )
    together = draw(st.lists(st.sampled_from(MEASURED_TOGETHER), max_size=4))
    elsewhere = dict.fromkeys([*somewhere, *(how for group in together for how in group)])
    readings = [
        Reading(
            gaze=gaze,
            range=at,
            correction=correction,
            horizontal_pd=draw(_near(angle_pd, 30)),
            vertical_pd=float(draw(st.integers(-20, 20))),
            condition=condition,
        )
        for gaze, at, condition in elsewhere
        if (gaze, at, condition) != (Gaze.PRIMARY, Range.DISTANCE, Condition.PLAIN)
    ]
    rest = draw(_all_else())
    if any(abs(each.horizontal_pd or 0) > LARGEST_BEHIND_SPECTACLES_PD for each in (target, *again, *readings)):
        rest = {name: value for name, value in rest.items() if not name.startswith("spectacles")}
    return Examination(examined_on="2026-11-02", readings=(target, *again, *readings), **rest)


def _near(angle_pd: float, most_pd: int) -> st.SearchStrategy[float]:
    return st.integers(-most_pd, most_pd).map(lambda shift_pd: max(-150.0, min(150.0, angle_pd + shift_pd)))


def _all_else() -> st.SearchStrategy[dict[str, Any]]:
    """The fields of an examination that are no readings."""
    halves = st.integers(-16, 16).map(lambda half: half / 2)
    return st.fixed_dictionaries(
        {},
        optional={
            "fixing_eye": st.sampled_from(FixingEye),
            "acuity_right": st.sampled_from(Acuity),
            "acuity_left": st.sampled_from(Acuity),
            "versions": st.lists(values_of(Version), max_size=4, unique_by=_moved).map(tuple),
            "previous_operations": st.lists(values_of(PreviousOperation), max_size=4).map(tuple),
            "spectacles_right_d": halves,
            "spectacles_left_d": halves,
            "pupil_distance_mm": st.integers(45, 75).map(float),
            "constancy": st.sampled_from(Constancy),
            "excyclotorsion_right_deg": st.integers(-10, 20).map(float),
            "excyclotorsion_left_deg": st.integers(-10, 20).map(float),
            "excyclotorsion_down_deg": st.integers(-10, 30).map(float),
            "dvd_right_pd": st.integers(0, 25).map(float),
            "dvd_left_pd": st.integers(0, 25).map(float),
            "head_posture": values_of(HeadPosture),
            "ductions": st.lists(values_of(Duction), max_size=4, unique_by=_moved).map(tuple),
            "forced_ductions": st.lists(values_of(ForcedDuction), max_size=4, unique_by=_moved).map(tuple),
            "conditions": st.lists(values_of(Validity), max_size=4, unique_by=lambda each: each.breaker).map(tuple),
            "diagnoses": st.lists(
                values_of(Diagnosed), max_size=3, unique_by=lambda each: (each.diagnosis, each.eye)
            ).map(tuple),
        },
    )


def _aims(examination: Examination) -> list[Aim]:
    """The aims for which this examination has a reading."""
    target = examination.readings[0]
    wanted = {
        Aim.DISTANCE: (Range.DISTANCE, Condition.PLAIN),
        Aim.AFTER_PATCHING: (Range.DISTANCE, Condition.AFTER_PATCHING),
        Aim.PRISM_ADAPTED: (Range.DISTANCE, Condition.PRISM_ADAPTED),
        Aim.NEAR: (Range.NEAR, Condition.PLAIN),
    }
    taken = {
        (each.range, each.condition)
        for each in examination.readings
        if each.gaze is Gaze.PRIMARY and each.correction is target.correction
    }
    return [aim for aim, how in wanted.items() if how in taken]


def _techniques() -> st.SearchStrategy[Prisms | None]:
    """Ways to hold prisms that can give any reading of up to 40 Δ."""
    one = st.builds(Prisms, material=st.sampled_from(Material), held=st.sampled_from(Held))
    split = st.builds(Prisms, material=st.sampled_from(Material), arrangement=st.just(Arrangement.SPLIT))
    return st.none() | one | split


def angles() -> st.SearchStrategy[float]:
    """Signed angles, the prism bar's steps and finer ones."""
    size = st.integers(1, 24).map(lambda step: 5.0 * step) | st.integers(1, 1400).map(lambda tenths: tenths / 10)
    return st.builds(lambda sign, pd: sign * pd, st.sampled_from((1, -1)), size)


def _moved(item: Any) -> tuple[Eye, Muscle]:
    return item.eye, item.muscle


def _held(technique: Prisms | None, angle_pd: float) -> Prisms | None:
    if technique is None or abs(angle_pd) > LARGEST_HELD_PD:
        return None
    second_pd = abs(angle_pd) / 2 if technique.arrangement is Arrangement.SPLIT else None
    return replace(technique, horizontal_second_pd=second_pd)
