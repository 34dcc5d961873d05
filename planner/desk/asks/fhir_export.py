"""Records as a FHIR Bundle."""

from __future__ import annotations

from dataclasses import dataclass

from planner.codec import read
from planner.desk.fields import Fields
from planner.exchange.fhir import Exporting, bundle, ledger_of

MOST_RECORDS = 5000


@dataclass(frozen=True, kw_only=True)
class Question(Exporting):
    """``records``: whether a list of them came; each is read by itself, for its digest is of the body as it came."""

    records: bool


def ask(fields: Fields) -> object:
    """A Bundle."""
    given = fields.get("records")
    is_list = isinstance(given, list) and len(given) <= MOST_RECORDS
    asked = read(Question, fields | ({"records": is_list or given} if "records" in fields else {}))
    return bundle(ledger_of(given if isinstance(given, list) else []), asked)
