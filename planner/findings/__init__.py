"""What the readings say: one module per finding, each giving a value for the later steps and sentences for people.

``target``         the deviation to be answered; refused where there is none
``size``           how large, in which direction, horizontal and vertical
``near_distance``  near against distance
``pattern``        A or V
``comitance``      the same in side gaze or not
``vision``         which eye sees less, and whether one eye is all the patient has

Differences are judged against the measurement error of :mod:`planner.precision`. Nothing here is a dose.
"""

from planner.findings.findings import Findings, find
from planner.findings.target import target

__all__ = ["Findings", "find", "target"]
