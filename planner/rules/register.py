"""The rules in the order in which their notices are read."""

from __future__ import annotations

from planner.dosing.draft import Draft
from planner.rules import (
    comitance,
    correction,
    maxima,
    measurement,
    minima,
    near,
    operated_muscle,
    pattern,
    recti,
    residual,
    seeing_eye,
    small_angle,
    table_reach,
    table_source,
    vertical,
)
from planner.situation import Situation
from planner.values.statement import Level, Notice

RULES = (
    measurement,
    seeing_eye,
    recti,
    maxima,
    minima,
    operated_muscle,
    residual,
    small_angle,
    vertical,
    pattern,
    comitance,
    near,
    correction,
    table_source,
)
"""The rules about an option that has doses."""

_ORDER = tuple(Level)


def notices(situation: Situation, draft: Draft) -> tuple[Notice, ...]:
    """All that must be said about an option, stops first; only what the table says where it gives no dose."""
    found = list(table_reach.notices(situation, draft))
    if draft.reach.has_doses:
        found += [notice for rule in RULES for notice in rule.notices(situation, draft)]
    return tuple(sorted(found, key=lambda notice: _ORDER.index(notice.level)))
