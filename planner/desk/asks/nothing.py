"""The fields of a question that needs none."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, kw_only=True)
class Nothing:
    """A question that needs nothing."""
