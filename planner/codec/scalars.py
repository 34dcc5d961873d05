"""Readers of single values: numbers, texts, words of a list, dates."""

from __future__ import annotations

import math
import re
from datetime import date, datetime
from enum import StrEnum

from planner.codec.faults import Faults, Reader, json_type
from planner.limits import IsoDate, IsoMoment, Length, Pattern, Prose, Within

LARGEST_WHOLE = 2**53 - 1
"""Beyond it a number has no exact form in JavaScript, so none in canonical JSON."""

PLAIN_TEXT = Prose(0, 4000)
"""What a text may be whose field says nothing: a sentence of the engine that comes back inside a plan."""

_CONTROL = re.compile(r"[\x00-\x1f\x7f-\x9f\u2028\u2029\ud800-\udfff]")
_CONTROL_BUT_LINES = re.compile(r"[\x00-\x08\x0b-\x1f\x7f-\x9f\u2028\u2029\ud800-\udfff]")
_DATE = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_MOMENT = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]{1,6})?(Z|[+-][0-9]{2}:[0-9]{2})")


def number(limit: Within | None, *, whole: bool) -> Reader:
    """A reader of finite numbers, whole ones where asked, within ``limit``."""
    low, high = (limit.low, limit.high) if limit else (-LARGEST_WHOLE, LARGEST_WHOLE)
    kind = "a whole number" if whole else "a number"
    allowed = f"{kind} from {low:g} to {high:g} {limit.unit}".rstrip() if limit else kind

    def read_number(value: object, path: str, faults: Faults) -> object:
        if isinstance(value, bool) or not isinstance(value, int | float):
            faults.add("wrong_type", f"This is {json_type(value)}, not {kind}.", path, value, allowed)
            return None
        if not low <= value <= high:  # NaN and infinity fail this too
            faults.add("out_of_range", "The figure is outside the allowed range.", path, _tellable(value), allowed)
            return None
        if not whole:
            return float(value) + 0.0  # -0.0 becomes 0.0: canonical JSON knows one zero
        if value != math.floor(value):
            faults.add("wrong_type", "This is a fraction, not a whole number.", path, value, allowed)
            return None
        return int(value)

    return read_number


def _tellable(value: float) -> object:
    return value if isinstance(value, int) or math.isfinite(value) else str(value)


def text(limit: Length | Prose) -> Reader:
    """A reader of texts that fit ``limit``."""
    forbidden = _CONTROL if isinstance(limit, Length) else _CONTROL_BUT_LINES
    allowed = f"a text of {limit.low} to {limit.high} characters"

    def read_text(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, str):
            faults.add("wrong_type", f"This is {json_type(value)}, not a text.", path, value, allowed)
        elif len(value) > limit.high:
            faults.add("too_long", "The text is too long.", path, value, allowed)
        elif forbidden.search(value):
            faults.add("bad_character", "The text holds a character that cannot be shown.", path, value, allowed)
        elif value != value.strip():
            faults.add("surrounding_space", "The text begins or ends with white space.", path, value, allowed)
        elif len(value) < limit.low:
            faults.add("too_short", "The text is too short.", path, value, allowed)
        return value

    return read_text


def pattern(limit: Pattern) -> Reader:
    """A reader of texts that match ``limit`` as a whole."""
    compiled = re.compile(limit.regex, re.ASCII)

    def read_pattern(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, str):
            faults.add("wrong_type", f"This is {json_type(value)}, not a text.", path, value, limit.words)
        elif not compiled.fullmatch(value):
            faults.add("bad_pattern", f"This is not {limit.words}.", path, value, limit.words)
        return value

    return read_pattern


def iso_date(limit: IsoDate) -> Reader:
    """A reader of calendar dates, kept as text."""
    allowed = f"a date such as {max(limit.earliest_year, 2019)}-04-30, from {limit.earliest_year} on"

    def read_date(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, str):
            faults.add("wrong_type", f"This is {json_type(value)}, not a date.", path, value, allowed)
            return None
        try:
            fits = bool(_DATE.fullmatch(value)) and date.fromisoformat(value).year >= limit.earliest_year
        except ValueError:
            fits = False
        if not fits:
            faults.add("bad_date", "This is not a calendar date in the allowed range.", path, value, allowed)
        return value

    return read_date


def iso_moment(_limit: IsoMoment) -> Reader:
    """A reader of moments with their offset, kept as text."""
    allowed = "a date and time with offset, such as 2026-11-25T09:30:00+01:00"

    def read_moment(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, str):
            faults.add("wrong_type", f"This is {json_type(value)}, not a date and time.", path, value, allowed)
            return None
        try:
            fits = bool(_MOMENT.fullmatch(value)) and datetime.fromisoformat(value).tzinfo is not None
        except ValueError:
            fits = False
        if not fits:
            faults.add("bad_date", "This is not a date and time with its offset.", path, value, allowed)
        return value

    return read_moment


def word(choices: type[StrEnum]) -> Reader:
    """A reader of the words of an enumeration."""
    members: dict[str, StrEnum] = {member.value: member for member in choices}
    allowed = ", ".join(members)

    def read_word(value: object, path: str, faults: Faults) -> object:
        if not isinstance(value, str):
            faults.add("wrong_type", f"This is {json_type(value)}, not a word.", path, value, allowed)
            return None
        if value not in members:
            faults.add("not_allowed", "This is not one of the allowed words.", path, value, allowed)
            return None
        return members[value]

    return read_word


def flag(value: object, path: str, faults: Faults) -> object:
    """Read true or false."""
    if not isinstance(value, bool):
        faults.add("wrong_type", f"This is {json_type(value)}, not true or false.", path, value, "true, false")
    return value


def figure_or_text(value: object, path: str, faults: Faults) -> object:
    """Read one fact of a statement: a number or a text."""
    reader = _FACT_TEXT if isinstance(value, str) else _FACT_NUMBER
    return reader(value, path, faults)


_FACT_TEXT = text(PLAIN_TEXT)
_FACT_NUMBER = number(None, whole=False)

read_key = text(Length(1, 60))
"""Reads the name of a fact."""
