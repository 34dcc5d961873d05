"""All findings of one examination."""

from __future__ import annotations

from dataclasses import dataclass

from planner.findings import comitance, near_distance, pattern, size, vision
from planner.findings.comitance import Comitance
from planner.findings.near_distance import Near
from planner.findings.pattern import Pattern
from planner.findings.vision import Vision
from planner.measurement import Measurements
from planner.values.proposal import Target
from planner.values.statement import Finding


@dataclass(frozen=True, kw_only=True)
class Findings:
    """The findings as values, and ``statements``: as sentences, in the order they are read."""

    near: Near
    pattern: Pattern
    comitance: Comitance
    vision: Vision
    statements: tuple[Finding, ...]


def find(measurements: Measurements, target: Target) -> Findings:
    """What the measurements say about ``target``, from readings with the correction that it was measured with."""
    correction = target.reading.correction
    near = near_distance.find(measurements, correction)
    shape = pattern.find(measurements, correction)
    side_gaze = comitance.find(measurements, correction)
    sight = vision.find(measurements.examination)
    return Findings(
        near=near,
        pattern=shape,
        comitance=side_gaze,
        vision=sight,
        statements=(
            *size.find(measurements, target),
            near.statement,
            shape.statement,
            side_gaze.statement,
            *sight.statements,
        ),
    )
