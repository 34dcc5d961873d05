"""Canonical JSON (RFC 8785) and its SHA-256: one text, and so one digest, for one value, on every device.

Numbers follow ECMAScript's ``Number::toString``, so ``5`` and ``5.0`` are the same; keys stand in UTF-16 order.
"""

from __future__ import annotations

import hashlib
import json
import math
from decimal import Decimal
from json.encoder import encode_basestring

MOST_PLAIN_DIGITS, MOST_LEADING_ZEROS = 21, 6
"""Where ECMAScript's ``Number::toString`` goes over to an exponent."""


def canonical(value: object) -> str:
    """The RFC 8785 text of a JSON value; raises ValueError for NaN, infinity or a whole number beyond 2**53 - 1."""
    match value:
        case str():
            return encode_basestring(value)
        case None | bool():
            return json.dumps(value)
        case int() | float():
            return _number(value)
        case list() | tuple():
            return f"[{','.join(map(canonical, value))}]"
        case dict():
            keys = sorted(value) if all(map(str.isascii, value)) else sorted(value, key=_utf_16)
            return "{" + ",".join(f"{encode_basestring(key)}:{canonical(value[key])}" for key in keys) + "}"
        case _:
            raise TypeError(f"{type(value).__name__} has no JSON form")


def digest(value: object) -> str:
    """SHA-256 of the canonical text, as 64 lower-case hexadecimal digits."""
    return hashlib.sha256(canonical(value).encode()).hexdigest()


def _utf_16(key: str) -> bytes:
    return key.encode("utf-16-be", "surrogatepass")


def _number(value: float) -> str:
    if isinstance(value, int):
        if abs(value) > 2**53 - 1:
            raise ValueError("a whole number beyond 2**53 - 1 has no canonical form")
        return str(value)
    if not math.isfinite(value):
        raise ValueError("NaN and infinity have no canonical form")
    if value == 0:
        return "0"
    sign, digits, exponent = Decimal(repr(value)).normalize().as_tuple()
    text = "".join(map(str, digits))
    point = len(text) + int(exponent)
    if len(text) <= point <= MOST_PLAIN_DIGITS:
        body = text + "0" * (point - len(text))
    elif 0 < point <= MOST_PLAIN_DIGITS:
        body = f"{text[:point]}.{text[point:]}"
    elif -MOST_LEADING_ZEROS < point <= 0:
        body = f"0.{'0' * -point}{text}"
    else:
        mantissa = text[0] + (f".{text[1:]}" if len(text) > 1 else "")
        body = f"{mantissa}e{'+' if point > 0 else '-'}{abs(point - 1)}"
    return ("-" if sign else "") + body
