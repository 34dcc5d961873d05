"""Limits that a field's annotation may carry: ``grade: Annotated[int, Within(-4, 4, "steps")]``.

They say what the codec accepts; a value made in code is trusted. A class says in ``RULES`` what its fields must be
together.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Within:
    """A number from ``low`` to ``high``, both included."""

    low: float
    high: float
    unit: str = ""


@dataclass(frozen=True)
class Length:
    """One line of ``low`` to ``high`` characters with no white space around it, or a list of as many items."""

    low: int
    high: int


@dataclass(frozen=True)
class Prose:
    """A text of ``low`` to ``high`` characters that may run over several lines, with no white space around it."""

    low: int
    high: int


@dataclass(frozen=True)
class Pattern:
    """A text that matches ``regex`` as a whole; ``words`` says in words what that means."""

    regex: str
    words: str


@dataclass(frozen=True)
class IsoDate:
    """A calendar date, ``YYYY-MM-DD``, from ``earliest_year`` on."""

    earliest_year: int = 1900


@dataclass(frozen=True)
class IsoMoment:
    """A date and time with its offset, such as ``2026-11-25T09:30:00+01:00``."""


@dataclass(frozen=True)
class Unique:
    """A list in which no two items agree in all of these fields."""

    fields: tuple[str, ...]


@dataclass(frozen=True)
class AnyOf:
    """A rule of a class: at least one of these fields is given."""

    fields: tuple[str, ...]
    words: str


@dataclass(frozen=True)
class Requires:
    """A rule of a class: ``field`` is given only together with ``needs``, which ``words`` names."""

    field: str
    needs: str
    words: str


Rule = AnyOf | Requires
