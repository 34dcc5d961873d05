"""How exact a figure is: what may be read into a measurement, and what is only its error.

``limits``     95 % limits of agreement of one reading and of a difference of two, by method, size and range
``strength``   clear, borderline within measurement error, cannot tell
``change``     whether two readings at different times differ by more than their error
``agreement``  several readings of the same thing: which one counts, and whether they disagree
``steady``     rounding on which every mathematics library agrees

The room knows records and statements, nothing of findings, options or optics. Nothing here is a dose.
"""

from planner.precision.agreement import Agreement, Repeat, settle
from planner.precision.change import RealChange, real_change
from planner.precision.limits import Direction, Limits, difference_limits_pd, limits_of
from planner.precision.steady import steady
from planner.precision.strength import sign_strength, threshold_strength, weakest
from planner.records.technique import Method
from planner.values.statement import Strength

__all__ = [
    "Agreement",
    "Direction",
    "Limits",
    "Method",
    "RealChange",
    "Repeat",
    "Strength",
    "difference_limits_pd",
    "limits_of",
    "real_change",
    "settle",
    "sign_strength",
    "steady",
    "threshold_strength",
    "weakest",
]
