"""A sentence made a finding."""

from __future__ import annotations

from planner.values.statement import Finding, Statement, Strength


def finding(statement: Statement, strength: Strength, settle: str = "") -> Finding:
    """``statement`` with its strength and what would settle it."""
    return Finding(
        code=statement.code,
        text=statement.text,
        provenance=statement.provenance,
        facts=statement.facts,
        strength=strength,
        settle=settle,
    )
