"""Readings made into figures: each corrected for the way it was taken, repeats settled, its error known.

``figure``        one direction of one thing that was measured: raw and corrected, with steps, limits and cautions
``taking``        one reading corrected by :mod:`planner.optics` for its prisms and the spectacles it went through
``measurements``  all figures of an examination, found by gaze, range, correction and condition

Findings, rules and options read figures, never readings. A reading without a technique is taken as labelled; spectacles
are corrected for where both lenses are known. What a prism held away from the eye does at near is told beside the
figure and does not change it, for dose tables and near-distance rules were made from ordinary near readings.

Refused, with the field of the reading in question, where the prisms named cannot have given it: ``second_prism``,
``out_of_range``, ``total_internal_reflection``, ``beyond_right_angle``, ``beyond_measurable``.
"""

from planner.measurement.figure import Figure
from planner.measurement.measurements import Measurements, measure

__all__ = ["Figure", "Measurements", "measure"]
