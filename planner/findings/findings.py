"""All findings of one examination."""

from __future__ import annotations

from dataclasses import dataclass

from planner.findings import comitance, near_distance, pattern, size, vision
from planner.findings.comitance import Comitance
from planner.findings.near_distance import Near
from planner.findings.pattern import Pattern
from planner.findings.vision import Vision
from planner.records.examination import Examination
from planner.values.proposal import Target
from planner.values.statement import Statement


@dataclass(frozen=True, kw_only=True)
class Findings:
    """The findings as values, and ``statements``: as sentences, in the order they are read."""

    near: Near
    pattern: Pattern
    comitance: Comitance
    vision: Vision
    statements: tuple[Statement, ...]


def find(examination: Examination, target: Target) -> Findings:
    """What ``examination`` says about ``target``."""
    near = near_distance.find(examination, target)
    shape = pattern.find(examination, target)
    side_gaze = comitance.find(examination, target)
    sight = vision.find(examination)
    return Findings(
        near=near,
        pattern=shape,
        comitance=side_gaze,
        vision=sight,
        statements=(
            *size.find(examination),
            near.statement,
            shape.statement,
            side_gaze.statement,
            *sight.statements,
        ),
    )
