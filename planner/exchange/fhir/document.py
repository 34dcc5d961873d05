"""The card of a signed plan as a document beside its order."""

from __future__ import annotations

import base64
import binascii
import hashlib
from dataclasses import dataclass
from typing import Annotated

from planner.errors import Fault, Refused
from planner.exchange.fhir.concepts import concept
from planner.exchange.fhir.ledger import Ledger
from planner.exchange.fhir.names import RECORD_ID, Resource, reference
from planner.exchange.fhir.resources.main import subject
from planner.limits import Pattern
from planner.records.plan import RecordId, Signature


@dataclass(frozen=True, kw_only=True)
class Card:
    """The page of a signature's card, as ``card_pdf`` gives it."""

    signature_id: RecordId
    pdf: Annotated[str, Pattern(r"[A-Za-z0-9+/]+={0,2}", "a file in base64")]


def document(card: Card, ledger: Ledger) -> Resource:
    """A DocumentReference with the page in it."""
    record = ledger.by_id.get(card.signature_id)
    if record is None or not isinstance(record.value, Signature):
        text = "There is no signature of this id among the records."
        raise Refused(Fault(code="reference_unknown", text=text, field="cards", value=card.signature_id))
    try:
        page = base64.b64decode(card.pdf, validate=True)
    except binascii.Error:
        raise Refused(Fault(code="bad_pattern", text="This is not base64.", field="cards")) from None
    plan_id = record.value.plan_id
    stands = ledger.stands(record.id) and ledger.stands(plan_id)
    return {
        "resourceType": "DocumentReference",
        "id": f"{record.id}-card",
        "identifier": [{"system": RECORD_ID, "value": record.id}],
        "status": "current" if stands else "superseded",
        "type": concept("theatre-card"),
        "subject": subject(record, ledger),
        "date": record.value.signed_at,
        "author": [{"display": record.value.signer_name}],
        "content": [
            {
                "attachment": {
                    "contentType": "application/pdf",
                    "data": card.pdf,
                    "size": len(page),
                    "hash": base64.b64encode(hashlib.sha1(page).digest()).decode("ascii"),  # noqa: S324 -- FHIR asks for SHA-1 here
                    "title": f"Card, check word {record.value.check_word}",
                }
            }
        ],
        "context": {"related": [reference("ServiceRequest", plan_id)]},
    }
