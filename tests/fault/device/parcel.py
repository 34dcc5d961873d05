"""A batch as a parcel, and the answer to one: see :mod:`clinic.sync.protocol`."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence

from tests.fault.device.stored import Raw


def parcel(batch: Sequence[Raw]) -> Raw:
    """The records without their digests, under one of them all."""
    digest = hashlib.sha256("".join(record["digest"] for record in batch).encode()).hexdigest()
    records = [{name: value for name, value in record.items() if name != "digest"} for record in batch]
    return {"digest": digest, "records": records}


def named(batch: Sequence[Raw], results: Sequence[Raw]) -> list[Raw]:
    """Results that stand in the order of the records, each with the id of its own."""
    return [result | {"id": record["id"]} for record, result in zip(batch, results, strict=True)]
