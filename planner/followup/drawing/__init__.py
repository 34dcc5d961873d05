"""The course of an operation as pictures: a deviation at one range over time, against what the plan expected.

``over_time``  one direction at one range as a chart
``spoken``     the same in words

Drawn by :mod:`planner.charts`; the root of time gives room to the first days.
"""

from planner.followup.drawing.over_time import pictures

__all__ = ["pictures"]
