"""One module per kind of record, with ``resources(record, ledger)``: the main resource first, then what follows.

A kind without a module is a ``Basic`` resource that carries its record.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from types import MappingProxyType

from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Resource
from planner.exchange.fhir.resources import (
    adjustment,
    examination,
    follow_up,
    operation,
    patient,
    plain,
    plan,
    signature,
)

Maker = Callable[[Told, Ledger], Iterator[Resource]]

MAKERS: Mapping[str, Maker] = MappingProxyType(
    {
        "patient": patient.resources,
        "examination": examination.resources,
        "plan": plan.resources,
        "signature": signature.resources,
        "operation": operation.resources,
        "adjustment": adjustment.resources,
        "follow_up": follow_up.resources,
    }
)


def resources(record: Told, ledger: Ledger) -> Iterator[Resource]:
    """What a record is in FHIR."""
    return MAKERS.get(record.kind, plain.resources)(record, ledger)
