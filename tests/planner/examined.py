"""Examinations for the tests, written with the words of the record, and what the engine finds in them."""

from planner.codec import read
from planner.findings import find, target
from planner.measurement import measure
from planner.records.case import Aim
from planner.records.examination import Examination


def taken(gaze, horizontal_pd=None, vertical_pd=None, *, at="distance", correction="with", **how):
    """One reading."""
    figures = {"horizontal_pd": horizontal_pd, "vertical_pd": vertical_pd}
    given = {name: figure for name, figure in figures.items() if figure is not None}
    return {"gaze": gaze, "range": at, "correction": correction, **given, **how}


def straight(horizontal_pd=None, vertical_pd=None, **how):
    """A reading of the primary position."""
    return taken("primary", horizontal_pd, vertical_pd, **how)


def examined(*readings, **rest):
    """The examination of these readings."""
    return read(Examination, {"schema": 1, "examined_on": "2026-11-02", "readings": list(readings), **rest})


def measured(*readings, **rest):
    return measure(examined(*readings, **rest))


def aimed(*readings, aim="distance", **rest):
    """The target of the plan."""
    return target(measured(*readings, **rest), Aim(aim))


def found(*readings, aim="distance", **rest):
    """The findings."""
    measurements = measured(*readings, **rest)
    return find(measurements, target(measurements, Aim(aim)))


def said(findings, code):
    """The findings of one code."""
    return [finding for finding in findings.statements if finding.code == code]


def the(findings, code):
    """The one finding of a code."""
    (finding,) = said(findings, code)
    return finding
