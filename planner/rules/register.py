"""The rules in the order in which their notices are read."""

from __future__ import annotations

from collections.abc import Iterable

from planner.dosing.draft import Draft
from planner.rules import (
    adjustable,
    age,
    axial_length,
    comitance,
    convergence,
    correction,
    maxima,
    measurement,
    minima,
    near,
    operated_muscle,
    pattern,
    principle,
    recti,
    release,
    reserve,
    residual,
    residual_esotropia,
    seeing_eye,
    small_angle,
    table_patients,
    table_reach,
    table_source,
    vertical,
)
from planner.situation import Situation
from planner.values.statement import Level, Notice

RULES = (
    measurement,
    principle,
    release,
    seeing_eye,
    recti,
    maxima,
    minima,
    operated_muscle,
    reserve,
    residual_esotropia,
    residual,
    small_angle,
    vertical,
    pattern,
    comitance,
    near,
    convergence,
    correction,
    table_patients,
    table_source,
    adjustable,
    axial_length,
    age,
)
"""The rules about an option that has doses."""

OF_MUSCLES = (measurement, principle, release, seeing_eye, recti, maxima, minima, operated_muscle, reserve)
"""The rules that look at muscles and eyes alone, and so at whatever is done beside the horizontal operation."""

OF_WHOLE = (release, seeing_eye, recti)
"""The rules that look at all muscles together, and so at a combination of options as at one."""

_ORDER = tuple(Level)


def notices(situation: Situation, draft: Draft) -> tuple[Notice, ...]:
    """All that must be said about an option, stops first; only what the table says where it gives no dose."""
    found = list(table_reach.notices(situation, draft))
    if draft.reach.has_doses:
        found += [notice for rule in RULES for notice in rule.notices(situation, draft)]
    return in_order(found)


def of_muscles(situation: Situation, draft: Draft) -> tuple[Notice, ...]:
    """What must be said about the muscles and eyes of an option that no table doses."""
    return tuple(notice for rule in OF_MUSCLES for notice in rule.notices(situation, draft)) if draft.doses else ()


def of_whole(situation: Situation, draft: Draft) -> tuple[Notice, ...]:
    """What must be said about all muscles together."""
    return tuple(notice for rule in OF_WHOLE for notice in rule.notices(situation, draft)) if draft.doses else ()


def in_order(notices: Iterable[Notice]) -> tuple[Notice, ...]:
    """Stops first, then cautions, then notes; what is said twice once."""
    once = {(notice.code, notice.text): notice for notice in notices}
    return tuple(sorted(once.values(), key=lambda notice: _ORDER.index(notice.level)))
