"""Visits after an operation, as the tests speak of them."""

from datetime import date, timedelta

from planner.records.follow_up import FollowUp

ID = "0190a0b0-0000-7000-8000-000000000004"
OPERATED_ON = "2026-11-25"


def on(days):
    """The calendar date so many days after the operation."""
    return (date.fromisoformat(OPERATED_ON) + timedelta(days=days)).isoformat()


def came(visit, days, **more):
    """A visit that was kept."""
    return FollowUp(operation_id=ID, visit=visit, seen_on=on(days), **more)
