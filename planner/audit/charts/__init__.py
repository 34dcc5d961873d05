"""The charts of a group, a module each, named by what it shows; each gives a :class:`planner.values.audit.Charted`."""

from planner.audit.charts.achieved import achieved
from planner.audit.charts.lasting import lasting
from planner.audit.charts.residual import residual
from planner.audit.charts.watch import watched

__all__ = ["achieved", "lasting", "residual", "watched"]
