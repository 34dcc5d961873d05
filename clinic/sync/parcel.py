"""A parcel: records that come without their digests, under one digest of them all (:mod:`clinic.sync.protocol`).

It is an economy and no other way in. Whatever is odd about any of its records refuses the parcel, and the device sends
them again with their digests, where each is judged by itself. What is opened here goes the same way as those.
"""

from __future__ import annotations

import hashlib

from clinic.sync.envelope import Pushed, split
from clinic.sync.result import Rejected
from planner.canonical import canonical


class ParcelRefused(Rejected):
    """None of its records was looked at any further."""


def opened(records: list[object], digest: str) -> list[Pushed]:
    """The records with their digests, in order; :class:`ParcelRefused` if ``digest`` is not that of them all."""
    pushed = [_opened(place, raw) for place, raw in enumerate(records)]
    digests = "".join(each.envelope.digest for each in pushed)
    if hashlib.sha256(digests.encode()).hexdigest() != digest:
        text = "These are not the records of that digest."
        raise ParcelRefused("parcel_differs", text, field="parcel.digest")
    return pushed


def _opened(place: int, raw: object) -> Pushed:
    """A body may be no canonical JSON in several ways, all of which are told here as one."""
    try:
        return _with_digest(raw)
    except (ValueError, TypeError, RecursionError) as error:
        text = "A record of the parcel cannot be read."
        raise ParcelRefused("parcel_malformed", text, field=f"parcel.records.{place}") from error


def _with_digest(raw: object) -> Pushed:
    if not isinstance(raw, dict) or "digest" in raw or "body" not in raw:
        raise Rejected("record_malformed", "This is not a record of a parcel.")
    text = canonical(raw["body"])
    return split(raw | {"digest": hashlib.sha256(text.encode()).hexdigest()}, text=text)
