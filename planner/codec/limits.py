"""Limits that a field's annotation may carry: ``horizontal_pd: Annotated[float, Within(-150, 150, "prism dioptres")]``."""

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
    """A text of ``low`` to ``high`` characters after surrounding white space is refused, or a list of as many items."""

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
