"""Sentences with where they come from."""

from __future__ import annotations

from planner.provenance import Mark, Provenance
from planner.values.statement import Statement

PRACTICE = Provenance(mark=Mark.COMMON_PRACTICE, source="the trade's usual way; the local protocol goes before it")
TAUGHT = Provenance(mark=Mark.FROM_MEMORY, source="standard teaching")


def practice(code: str, text: str) -> Statement:
    """Common practice."""
    return Statement(code=code, text=text, provenance=PRACTICE, facts={})


def taught(code: str, text: str) -> Statement:
    """From memory, to be verified."""
    return Statement(code=code, text=text, provenance=TAUGHT, facts={})


def printed(code: str, text: str, source: str) -> Statement:
    """Published in ``source``."""
    provenance = Provenance(mark=Mark.PUBLISHED, source=source)
    return Statement(code=code, text=text, provenance=provenance, facts={})
