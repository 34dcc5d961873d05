"""Hypothesis strategies for the engine's values.

:func:`values_of` makes any value of a dataclass from its annotations and limits; :func:`cases` makes clinically
possible cases, which is what the engine's promises are about.
"""

from __future__ import annotations

import math
import types
from collections.abc import Mapping
from dataclasses import MISSING, fields, is_dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from hypothesis import strategies as st

from planner.anatomy import Eye, Muscle
from planner.limits import AnyOf, IsoDate, IsoMoment, Length, Pattern, Prose, Unique, Within
from planner.records.case import Case
from planner.records.examination import (
    Acuity,
    Correction,
    Examination,
    FixingEye,
    Gaze,
    PreviousOperation,
    Range,
    Reading,
)
from planner.records.motility import Version

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
    return st.builds(
        Case,
        examination=examinations(),
        table=st.sampled_from(("wright-after-parks", "classic-parks")),
        born_on=st.none() | st.just("2001-05-17"),
    )


def examinations() -> st.SearchStrategy[Examination]:
    """Examinations with a horizontal deviation in the primary position at distance."""
    return st.builds(
        _examination,
        st.sampled_from(Correction),
        angles(),
        st.lists(
            st.tuples(st.sampled_from(Gaze), st.sampled_from(Range), st.integers(-30, 30), st.integers(-20, 20)),
            max_size=8,
            unique_by=lambda reading: reading[:2],
        ),
        st.fixed_dictionaries(
            {},
            optional={
                "fixing_eye": st.sampled_from(FixingEye),
                "acuity_right": st.sampled_from(Acuity),
                "acuity_left": st.sampled_from(Acuity),
                "versions": st.lists(values_of(Version), max_size=4, unique_by=_moved).map(tuple),
                "previous_operations": st.lists(values_of(PreviousOperation), max_size=4).map(tuple),
            },
        ),
    )


def angles() -> st.SearchStrategy[float]:
    """Signed angles, the prism bar's steps and finer ones."""
    size = st.integers(1, 24).map(lambda step: 5.0 * step) | st.integers(1, 1400).map(lambda tenths: tenths / 10)
    return st.builds(lambda sign, pd: sign * pd, st.sampled_from((1, -1)), size)


def _moved(item: Any) -> tuple[Eye, Muscle]:
    return item.eye, item.muscle


def _examination(
    correction: Correction, angle_pd: float, others: list[tuple[Gaze, Range, int, int]], rest: dict[str, Any]
) -> Examination:
    target = Reading(gaze=Gaze.PRIMARY, range=Range.DISTANCE, correction=correction, horizontal_pd=angle_pd)
    readings = [
        Reading(
            gaze=gaze,
            range=at,
            correction=correction,
            horizontal_pd=max(-150.0, min(150.0, angle_pd + shift_pd)),
            vertical_pd=float(vertical_pd),
        )
        for gaze, at, shift_pd, vertical_pd in others
        if (gaze, at) != (Gaze.PRIMARY, Range.DISTANCE)
    ]
    return Examination(examined_on="2026-11-02", readings=(target, *readings), **rest)
