"""Values to JSON and back, the same for phone, server and command line.

- :func:`parse` turns JSON text into a JSON value: size and depth limited, no NaN, no key twice.
- :func:`read` turns a JSON value into a value of a class; :func:`read_body` does so for the body of a record kind.
- :func:`write` turns a value into a JSON value.

The form follows the dataclasses: an object with the fields' names as keys, tuples as lists, enumerations as their
words. A field with a default may be left out, except ``schema``, which is always said. Nothing else is forgiving: an
unknown or missing key, a wrong type, a figure outside its limits (``planner.limits``) or a repeated item is refused,
and all faults are told at once. Whole numbers do for fractions and the other way round (``5`` and ``5.0`` are one
number in canonical JSON); true and false are no numbers.

Codes of the faults: ``bad_json``, ``too_deep``, ``missing``, ``unknown_field``, ``unknown_kind``, ``wrong_type``,
``out_of_range``, ``not_allowed``, ``bad_date``, ``bad_pattern``, ``bad_character``, ``surrounding_space``,
``too_long``, ``too_short``, ``repeated``, ``unsupported_schema``.

Only the reading side knows limits; a value made by the engine is written as it is.
"""

from planner.codec.bodies import KINDS, read_body
from planner.codec.reading import read
from planner.codec.text import parse
from planner.codec.writing import write

__all__ = ["KINDS", "parse", "read", "read_body", "write"]
