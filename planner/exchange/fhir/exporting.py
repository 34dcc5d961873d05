"""Records to a Bundle: each with its resources and its provenance, the cards, and our code system."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Annotated

from planner.exchange.fhir.concepts import code_system
from planner.exchange.fhir.document import Card, document
from planner.exchange.fhir.ledger import Ledger
from planner.exchange.fhir.names import BUNDLE_ID, Resource, full_url
from planner.exchange.fhir.provenance import provenance
from planner.exchange.fhir.resources import resources
from planner.limits import IsoMoment, Length, Unique
from planner.records.plan import RecordId


@dataclass(frozen=True, kw_only=True)
class Exporting:
    """What is told of the export itself, and the pages of the cards."""

    export_id: RecordId
    exported_at: Annotated[str, IsoMoment()]
    cards: Annotated[tuple[Card, ...], Length(0, 60), Unique(("signature_id",))] = ()


def bundle(ledger: Ledger, exporting: Exporting) -> Resource:
    """A Bundle of the type ``collection``."""
    every = (*of_records(ledger), *(document(each, ledger) for each in exporting.cards), code_system())
    return {
        "resourceType": "Bundle",
        "identifier": {"system": BUNDLE_ID, "value": exporting.export_id},
        "type": "collection",
        "timestamp": exporting.exported_at,
        "entry": [
            {"fullUrl": full_url(str(each["resourceType"]), str(each["id"])), "resource": each} for each in every
        ],
    }


def of_records(ledger: Ledger) -> Iterator[Resource]:
    """What follows from the records alone, in their order."""
    for record in ledger.records:
        main, *others = resources(record, ledger)
        yield from (main, *others)
        yield provenance(record, main)
