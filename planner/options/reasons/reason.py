"""One reason for or against an option."""

from __future__ import annotations

from dataclasses import dataclass

from planner.provenance import Mark, Provenance
from planner.values.statement import Statement


@dataclass(frozen=True)
class Reason:
    """``statement`` speaks for the option, or against it."""

    statement: Statement
    speaks_for: bool


def speaks_for(code: str, text: str, provenance: Provenance, **facts: str | float) -> Reason:
    """A reason for."""
    return Reason(Statement(code=code, text=text, provenance=provenance, facts=facts), speaks_for=True)


def speaks_against(code: str, text: str, provenance: Provenance, **facts: str | float) -> Reason:
    """A reason against."""
    return Reason(Statement(code=code, text=text, provenance=provenance, facts=facts), speaks_for=False)


def common_practice(source: str) -> Provenance:
    """The provenance of what surgeons do without a source to name."""
    return Provenance(mark=Mark.COMMON_PRACTICE, source=source)
