"""Results as an audit: figures in words and charts."""

from __future__ import annotations

from planner import audit as audits
from planner.codec import read, write
from planner.desk.asks.watching import refuse_blind_watch
from planner.desk.fields import Fields
from planner.values.audit import Audit


def ask(fields: Fields) -> object:
    """``Audit``; refused where the watch would expect no fewer failures than it calls worse."""
    return write(audit_of(fields))


def audit_of(fields: Fields) -> Audit:
    """The audit as a value."""
    asked = read(audits.Question, fields)
    refuse_blind_watch(asked)
    return audits.audit(asked)
