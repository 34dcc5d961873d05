"""The record of a check in theatre that came to its end."""

from __future__ import annotations

from dataclasses import replace

from planner import checks
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.asks.follow_check import UNREAD
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """A ``TheatreCheck``."""
    held = fields.get("round")
    closing = read(checks.Closing, fields | {"round": held | UNREAD} if isinstance(held, dict) else fields)
    check = replace(closing.round, plan_digest=digest(fields["round"]["plan"]))
    return write(checks.close(replace(closing, round=check)))
