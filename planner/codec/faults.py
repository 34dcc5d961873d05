"""Faults collected while a value is read."""

from __future__ import annotations

import json
from collections.abc import Callable

from planner.errors import Fault, Refused

MOST_FAULTS = 50
"""A person cannot use more, and a hostile input must not make the answer larger than itself."""

SHOWN_CHARACTERS = 80


class Faults:
    """The faults found so far, in the order of the input's fields."""

    def __init__(self) -> None:
        self._faults: list[Fault] = []
        self.count = 0

    def add(self, code: str, text: str, path: str, value: object = ..., allowed: str = "") -> None:
        """Note one fault; ``value`` is what was given, left out where nothing was."""
        self.count += 1
        if self.count <= MOST_FAULTS:
            shown = "" if value is ... else shorten(value)
            self._faults.append(Fault(code=code, text=text, field=path, value=shown, allowed=allowed))

    def refuse_if_any(self) -> None:
        """Raise :class:`Refused` with everything found."""
        if self._faults:
            raise Refused(*self._faults)


Reader = Callable[[object, str, Faults], object]
"""Reads a JSON value found at a dotted path; what it returns counts only if it added no fault."""


def shorten(value: object) -> str:
    """``value`` as JSON text of readable length; of a list or an object only its size, so that no depth can hurt."""
    match value:
        case dict():
            return f"an object of {len(value)}"
        case list() | tuple():
            return f"a list of {len(value)}"
        case str():
            text = json.dumps(value[:SHOWN_CHARACTERS])
        case None | bool() | float():
            text = json.dumps(value)
        case int():
            text = json.dumps(value) if value.bit_length() < 4 * SHOWN_CHARACTERS else "a number of very many digits"
        case _:
            text = type(value).__name__
    return text if len(text) <= SHOWN_CHARACTERS else f"{text[: SHOWN_CHARACTERS - 1]}…"


def spell(key: object) -> str:
    """A key of an input as part of a path: of readable length, and a text that every encoding can carry."""
    return str(key)[:SHOWN_CHARACTERS].encode("utf-8", "backslashreplace").decode()


def json_type(value: object) -> str:
    """What a JSON value is, in words."""
    match value:
        case None:
            return "null"
        case bool():
            return "true or false"
        case str():
            return "a text"
        case int() | float():
            return "a number"
        case list() | tuple():
            return "a list"
        case dict():
            return "an object"
        case _:
            return f"a {type(value).__name__}"
