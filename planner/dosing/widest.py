"""The most that may be done to a muscle at all."""

from __future__ import annotations

from planner.anatomy import Muscle
from planner.maxima import MAXIMA
from planner.series import Series
from planner.tables import Table
from planner.values.option import Operation


def widest_mm(source: Table | Series, muscle: Muscle, operation: Operation) -> float:
    """What the source of the dose did itself where it went beyond the widest conventional maximum, else that."""
    own = source.maxima.get((muscle, operation))
    return own.mm if own else MAXIMA[muscle, operation].widest_mm
