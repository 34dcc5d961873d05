"""Charts as pictures: figures in, a :class:`~planner.values.picture.Picture` out, for the screen and for paper alike.

``axis``     round ticks, a time axis in days, weeks, months or years, and two axes that are alike
``layers``   what a chart shows: points, lines, bands, bars, levels; told apart by shape and stroke, never by colour
``plane``    from figures to millimetres of the picture
``painting`` the strokes of each layer
``labels``   words beside points, so that none meets another
``key``      what each shape means, under the plot
``drawing``  all of it together

:func:`draw` is the door. A chart brings its own words (``spoken``) for who does not see it; its figures belong into a
table beside it. Nothing is judged or counted here.
"""

from planner.charts.axis import Axis, Spacing, Tick, alike, course_axis, days_axis, round_axis
from planner.charts.drawing import Chart, draw
from planner.charts.layers import Band, Bar, Bars, Identity, Level, Line, Point, Points, Shape, steps

__all__ = [
    "Axis",
    "Band",
    "Bar",
    "Bars",
    "Chart",
    "Identity",
    "Level",
    "Line",
    "Point",
    "Points",
    "Shape",
    "Spacing",
    "Tick",
    "alike",
    "course_axis",
    "days_axis",
    "draw",
    "round_axis",
    "steps",
]
