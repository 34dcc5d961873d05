"""All findings of one examination."""

from __future__ import annotations

from dataclasses import dataclass

from planner.findings import (
    aca,
    accommodative,
    bilateral,
    comitance,
    constancy,
    dissociated,
    ductions,
    greatest,
    head_posture,
    icd10,
    near_distance,
    oblique,
    pattern,
    previous_surgery,
    response,
    size,
    three_step,
    torsion,
    vision,
)
from planner.findings.bilateral import Bilateral
from planner.findings.comitance import Comitance
from planner.findings.ductions import Ductions
from planner.findings.near_distance import Near
from planner.findings.pattern import Pattern
from planner.findings.previous_surgery import PreviousSurgery
from planner.findings.three_step import Palsy
from planner.findings.torsion import Torsion
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
    palsy: Palsy
    torsion: Torsion
    bilateral: Bilateral
    ductions: Ductions
    previous: PreviousSurgery
    vision: Vision
    statements: tuple[Finding, ...]


def find(measurements: Measurements, target: Target) -> Findings:
    """What the measurements say about ``target``, from readings with the correction that it was measured with."""
    examination, correction = measurements.examination, target.reading.correction
    near = near_distance.find(measurements, correction)
    shape = pattern.find(measurements, correction)
    side_gaze = comitance.find(measurements, correction)
    palsy = three_step.find(measurements, correction)
    twist = torsion.find(examination)
    both = bilateral.find(measurements, correction, palsy, twist)
    movement = ductions.find(examination)
    previous = previous_surgery.find(examination, target, movement)
    sight = vision.find(examination)
    return Findings(
        near=near,
        pattern=shape,
        comitance=side_gaze,
        palsy=palsy,
        torsion=twist,
        bilateral=both,
        ductions=movement,
        previous=previous,
        vision=sight,
        statements=(
            *size.find(measurements, target),
            *constancy.find(examination),
            near.statement,
            *response.find(measurements, correction),
            *aca.find(measurements, correction),
            *accommodative.find(measurements),
            shape.statement,
            side_gaze.statement,
            *greatest.find(measurements, correction),
            *palsy.statements,
            *oblique.find(examination, shape),
            *twist.statements,
            *both.statements,
            *dissociated.find(examination),
            *head_posture.find(measurements, correction, shape),
            *movement.statements,
            *previous.statements,
            *sight.statements,
            *icd10.find(examination, target, side_gaze, palsy, movement),
        ),
    )
