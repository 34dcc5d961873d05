"""Who made a record, when, on which device; of a plan also by which table and version of the engine."""

from __future__ import annotations

from planner.exchange.fhir.ledger import Told
from planner.exchange.fhir.names import RECORD_ID, Resource, reference, term
from planner.records.plan import Plan


def provenance(record: Told, main: Resource) -> Resource:
    """The Provenance of a record's main resource."""
    envelope = record.envelope
    return {
        "resourceType": "Provenance",
        "id": f"{record.id}-made",
        "target": [reference(str(main["resourceType"]), record.id)],
        "recorded": envelope.recorded_at,
        "agent": [
            {"type": term("provenance-participant-type", "author"), "who": {"display": envelope.author}},
            {
                "type": term("provenance-participant-type", "assembler"),
                "who": {"identifier": {"system": RECORD_ID, "value": envelope.device}, "display": "device"},
            },
        ],
        **({"entity": _sources(record.value)} if isinstance(record.value, Plan) else {}),
    }


def _sources(plan: Plan) -> list[Resource]:
    table = plan.option.table or plan.table
    told = (f"Dose table {table.id}: {table.name} ({table.provenance.mark})", f"Engine {plan.engine_version}")
    return [{"role": "source", "what": {"display": each}} for each in told]
