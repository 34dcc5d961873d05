"""The records of a push, in either form: each with its digest, or as a parcel."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from clinic.api.refusals import Refusal
from clinic.errors.shape import Error
from clinic.sync.parcel import ParcelRefused, opened
from clinic.sync.protocol import MOST_RECORDS

ALLOWED = f"a list of at most {MOST_RECORDS} records"


@dataclass(frozen=True, kw_only=True)
class Batch:
    """``records`` as :func:`clinic.sync.push.push` takes them; ``parcel`` is the digest of a parcel, else None."""

    records: Sequence[object]
    parcel: str | None = None


def batch_of(body: dict[str, object]) -> Batch:
    """What a request lists; a Refusal that names the field if it lists nothing, or too much, or a broken parcel."""
    if "parcel" not in body:
        return Batch(records=_listed(body.get("records"), field="records"))
    parcel = body["parcel"]
    if "records" in body or not isinstance(parcel, dict) or not isinstance(parcel.get("digest"), str):
        text = "A parcel has a digest and its records, and comes alone."
        raise Refusal(400, Error(code="parcel_malformed", text=text, field="parcel", allowed="digest and records"))
    try:
        records = opened(_listed(parcel.get("records"), field="parcel.records"), parcel["digest"])
    except ParcelRefused as why:
        raise Refusal(400, Error(code=why.code, text=why.text, field=why.field)) from why
    return Batch(records=records, parcel=parcel["digest"])


def _listed(records: object, *, field: str) -> list[object]:
    if not isinstance(records, list):
        text = "The request must list its records."
        raise Refusal(400, Error(code="records_missing", text=text, field=field, allowed=ALLOWED))
    if len(records) > MOST_RECORDS:
        text = "Too many records at once. Nothing was stored; send fewer."
        value = str(len(records))
        raise Refusal(413, Error(code="batch_too_large", text=text, field=field, value=value, allowed=ALLOWED))
    return records
