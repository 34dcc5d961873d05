"""Distances on the eye: what lies along the surface and what a straight caliper spans."""

from __future__ import annotations

from math import sin

from planner.precision.steady import steady
from planner.provenance import Mark, Provenance

CONVENTIONAL_AXIAL_LENGTH_MM = 24.0
"""The globe's diameter where it was not measured: common practice."""

CHORD = Provenance(mark=Mark.COMPUTED, source="chord of an arc a on a globe of radius R: 2 R sin(a / 2R)")


def chord_mm(arc_mm: float, axial_length_mm: float) -> float:
    """What a straight caliper spans for ``arc_mm`` along a globe of that diameter, to 0.01 mm."""
    return steady(axial_length_mm * sin(arc_mm / axial_length_mm), 2)
