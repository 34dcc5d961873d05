"""Visits after an operation, as the tests speak of them."""

import json
from datetime import date, timedelta

from planner.canonical import digest
from planner.codec import read, write
from planner.followup import course
from planner.followup.aftercare import Aftercare
from planner.records.follow_up import FollowUp
from tests.planner.operation.theatre import IDS, drafted

ID = "0190a0b0-0000-7000-8000-000000000004"
OPERATED_ON = "2026-11-25"


OWN = {
    "schema": 1,
    "decided_by": "Dr. Mira Example",
    "reason": "Most live nearby.",
    "visits": [
        {"name": "Week 4", "first_day": 25, "last_day": 34},
        {"name": "Day 1", "first_day": 1, "last_day": 1},
    ],
}
"""A clinic's practice with visits of its own, not in their order."""


def on(days):
    """The calendar date so many days after the operation."""
    return (date.fromisoformat(OPERATED_ON) + timedelta(days=days)).isoformat()


def came(visit, days, **more):
    """A visit that was kept."""
    return FollowUp(operation_id=ID, visit=visit, seen_on=on(days), **more)


def visit(name, days, *readings, **more):
    """A visit as the desk is told it, measured on its day where there are readings."""
    about_visit = {"infection_signs", "stereo_octaves_lost", "ahead"}
    told = {key: value for key, value in more.items() if key in about_visit}
    measured = {key: value for key, value in more.items() if key not in about_visit}
    body = {"schema": 1, "operation_id": ID, "visit": name, "seen_on": on(days), **told}
    if not readings:
        return {"follow_up": body, "examination": None}
    examination = {"schema": 1, "examined_on": on(days), "readings": list(readings), **measured}
    bound = {"examination_id": IDS["examination"], "examination_digest": digest(examination)}
    return {"follow_up": body | bound, "examination": examination}


def cared(pieces, *visits, adjustment=None, today=None, operation=None):
    """The JSON of an operation done as planned, and of what followed."""
    return {
        "plan": pieces[0],
        "operation": operation or drafted(pieces, OPERATED_ON),
        "adjustment": adjustment,
        "attended": list(visits),
        "today": today,
    }


def told(care):
    """The engine's course of it, as JSON."""
    return json.loads(json.dumps(write(course(read(Aftercare, care)))))


def codes(care):
    """The codes of the warnings of each visit."""
    return [[each["code"] for each in visited["warnings"]] for visited in told(care)["visits"]]
