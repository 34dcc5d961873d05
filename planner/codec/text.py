"""JSON text to a JSON value, with the gaps closed that the standard parser leaves open."""

from __future__ import annotations

import json
import re
from typing import NoReturn

from planner.codec.faults import spell
from planner.errors import Fault, Refused

MOST_CHARACTERS = 12_000_000
"""Above the longest honest request: ten thousand operations with what was seen of them, for an audit."""

MOST_LEVELS = 40
"""Four times the deepest honest request; well within every interpreter's stack, that of a browser's worker included."""

_TOKEN = re.compile(r'"(?:[^"\\]++|\\.)*+"?|[\[{]|[\]}]', re.DOTALL)


def parse(text: str) -> object:
    """The JSON value of ``text``; :class:`Refused` with ``bad_json``, ``repeated``, ``too_long`` or ``too_deep``."""
    if len(text) > MOST_CHARACTERS:
        allowed = f"at most {MOST_CHARACTERS} characters"
        raise Refused(Fault(code="too_long", text="The input is too large.", value=str(len(text)), allowed=allowed))
    if _is_too_deep(text):
        allowed = f"at most {MOST_LEVELS} levels"
        raise Refused(Fault(code="too_deep", text="The input is nested too deeply.", allowed=allowed))
    try:
        return json.loads(text, object_pairs_hook=_object, parse_constant=_no_constant)
    except json.JSONDecodeError as error:
        place = f"line {error.lineno}, column {error.colno}"
        raise Refused(_not_json(f"The input is not JSON; reading stopped at {place}.")) from None
    except Refused:
        raise
    except ValueError:  # a whole number of thousands of digits
        raise Refused(_not_json("The input holds a number of too many digits.")) from None


def _not_json(text: str) -> Fault:
    return Fault(code="bad_json", text=text, allowed="JSON text")


def _is_too_deep(text: str) -> bool:
    if text.count("[") + text.count("{") <= MOST_LEVELS:
        return False
    level = 0
    for token in _TOKEN.finditer(text):
        match token[0]:
            case "[" | "{":
                level += 1
                if level > MOST_LEVELS:
                    return True
            case "]" | "}":
                level -= 1
    return False


def _object(pairs: list[tuple[str, object]]) -> dict[str, object]:
    value = dict(pairs)
    if len(value) < len(pairs):
        seen: set[str] = set()
        for key, _ in pairs:
            if key in seen:
                raise Refused(Fault(code="repeated", text="An object names a field twice.", field=spell(key)))
            seen.add(key)
    return value


def _no_constant(name: str) -> NoReturn:
    raise Refused(_not_json(f"{name} is not a number in JSON."))
