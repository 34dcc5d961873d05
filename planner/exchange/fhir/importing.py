"""A Bundle to records, with a row for every resource: taken, here already, or why not.

A resource of ours carries its record. It is taken whole, under its own id and with its own content, if the resources in
the Bundle are those that the records make: what was changed by hand beside the record is refused together with it.
What a record refers to must be here, or be taken with it. The clinic's server has the last word, as on all records.

Codes: ``not_a_bundle``, ``too_long``; of a row: ``altered``, ``differs``, ``digest_mismatch``, ``not_allowed``,
``not_known``, ``record_not_taken``, ``reference_unknown``, ``repeated``, ``role_may_not``, ``signer_differs``, and the
codec's.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.errors import Fault, Refused
from planner.exchange.fhir.intake import Bringer, Brought, Intake
from planner.exchange.fhir.others import take_others
from planner.exchange.fhir.ours import take_ours
from planner.exchange.fhir.row import Entry, Row

MOST_ENTRIES: Final = 20000


@dataclass(frozen=True, kw_only=True)
class Taking:
    """``records`` in an order in which each finds what it refers to."""

    rows: tuple[Row, ...]
    records: tuple[Brought, ...]


def take(bundle: object, bringer: Bringer) -> Taking:
    """The dry run: what would be saved. Nothing is."""
    entries = _entries(bundle)
    intake = Intake(bringer)
    take_ours(entries, intake)
    take_others(entries, intake)
    return Taking(rows=tuple(intake.rows[entry.place] for entry in entries), records=tuple(intake.records))


def _entries(bundle: object) -> list[Entry]:
    if not isinstance(bundle, dict) or bundle.get("resourceType") != "Bundle":
        raise Refused(Fault(code="not_a_bundle", text="This is not a Bundle.", allowed="a FHIR R4 Bundle as JSON"))
    entry = bundle.get("entry", [])
    if not isinstance(entry, list) or len(entry) > MOST_ENTRIES:
        text = "The Bundle's entries are no list of this length."
        raise Refused(Fault(code="too_long", text=text, field="entry", allowed=f"at most {MOST_ENTRIES} entries"))
    return [_entry(place, each if isinstance(each, dict) else {}) for place, each in enumerate(entry, start=1)]


def _entry(place: int, said: dict[str, object]) -> Entry:
    resource, url = said.get("resource"), said.get("fullUrl")
    return Entry(place, resource if isinstance(resource, dict) else {}, url if isinstance(url, str) else "")
