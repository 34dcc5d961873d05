"""How old a patient is."""

from __future__ import annotations

from datetime import date


def age_years(born_on: str, on: str) -> int:
    """Completed years from one calendar date (``YYYY-MM-DD``) to another."""
    born, then = date.fromisoformat(born_on), date.fromisoformat(on)
    return then.year - born.year - ((then.month, then.day) < (born.month, born.day))
