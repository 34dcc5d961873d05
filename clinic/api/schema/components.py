"""Schemas that no serializer describes: the engine's values, a record, and the error shape."""

from __future__ import annotations

from typing import Any

from clinic.api.schema.shapes import Schema, components, reference
from planner.codec import KINDS
from planner.records.case import Case
from planner.values.proposal import Proposal

ERRORS: Schema = {
    "type": "object",
    "description": "What is wrong, most important first.",
    "additionalProperties": False,
    "required": ["errors"],
    "properties": {
        "errors": {
            "type": "array",
            "minItems": 1,
            "items": {
                "type": "object",
                "additionalProperties": False,
                "required": ["code", "text", "field", "value", "allowed"],
                "properties": {name: {"type": "string"} for name in ("code", "text", "field", "value", "allowed")},
            },
        }
    },
}

ENVELOPE: Schema = {
    "id": {"type": "string", "format": "uuid", "description": "UUIDv7 made on the device: the idempotency key."},
    "kind": {"type": "string", "enum": sorted(KINDS)},
    "clinic": {"type": "string", "format": "uuid"},
    "patient": {"type": "string", "format": "uuid"},
    "author": {"type": "string", "description": "The name of the account."},
    "device": {"type": "string", "format": "uuid"},
    "recorded_at": {"type": "string", "format": "date-time", "description": "The device's time with its offset."},
    "supersedes": {"type": "array", "items": {"type": "string", "format": "uuid"}},
    "body": {"oneOf": [reference(cls) for cls in KINDS.values()]},
    "digest": {"type": "string", "pattern": "^[0-9a-f]{64}$"},
}
RECEIPT: Schema = {
    "receipt": {"type": "string", "description": "The server's word that it took the record, by whomever it is sent."}
}
SEAL: Schema = {"seal": {"type": "string", "description": "Of the device that made it, when another one brings it."}}
PLACE: Schema = {
    "position": {"type": "integer", "minimum": 1},
    "received_at": {"type": "string", "format": "date-time"},
}


def add_components(result: dict[str, Any], **_: Any) -> dict[str, Any]:  # noqa: ANN401
    """A drf-spectacular hook: add the schemas, and the error shape to every operation."""
    schemas = result["components"].setdefault("schemas", {})
    schemas |= components(Case, Proposal, *KINDS.values())
    schemas["Errors"] = ERRORS
    schemas["Record"] = _record(ENVELOPE, may=RECEIPT | SEAL)
    schemas["StoredRecord"] = _record(ENVELOPE | PLACE | RECEIPT)
    failure = {
        "description": "The request was refused.",
        "content": {"application/json": {"schema": {"$ref": "#/components/schemas/Errors"}}},
    }
    for path in result["paths"].values():
        for operation in path.values():
            operation["responses"]["default"] = failure
            if "requestBody" in operation:
                operation["requestBody"]["required"] = True
    return result


def _record(must: Schema, *, may: Schema | None = None) -> Schema:
    return {"type": "object", "additionalProperties": False, "required": [*must], "properties": must | (may or {})}
