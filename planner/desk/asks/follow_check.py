"""Where a check in theatre stands."""

from __future__ import annotations

from dataclasses import replace

from planner import checks
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields

UNREAD = {"plan_digest": "0" * 64}
"""In the place of the digest, which is made from the plan as it came once that is known to be one."""


def ask(fields: Fields) -> object:
    """A ``Progress``."""
    check = read(checks.Round, fields | UNREAD)
    return write(checks.follow(replace(check, plan_digest=digest(fields["plan"]))))
