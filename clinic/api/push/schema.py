"""What a push takes and answers, in OpenAPI's words.

A record is described by the ``Record`` component; the server takes anything in its place and answers for it alone, so
that one record it cannot read does not refuse the others.
"""

from __future__ import annotations

from typing import Any

from clinic.sync.protocol import MOST_RECORDS
from clinic.sync.result import Status

PARCEL: dict[str, Any] = {
    "type": "object",
    "required": ["digest", "records"],
    "description": "In place of records: they come without their digests, under one digest of them all.",
    "properties": {
        "digest": {"type": "string", "pattern": "^[0-9a-f]{64}$"},
        "records": {"type": "array", "maxItems": MOST_RECORDS, "items": {"type": "object"}},
    },
}

REQUEST: dict[str, Any] = {
    "type": "object",
    "required": ["device"],
    "oneOf": [{"required": ["records"]}, {"required": ["parcel"]}],
    "properties": {
        "device": {"type": "string", "format": "uuid"},
        "parcel": PARCEL,
        "records": {"type": "array", "maxItems": MOST_RECORDS, "items": {"$ref": "#/components/schemas/Record"}},
        "last": {
            "type": "boolean",
            "default": False,
            "description": "After this the device holds nothing that was not sent: the farewell of a revoked device.",
        },
    },
}

RESULT: dict[str, Any] = {
    "type": "object",
    "additionalProperties": False,
    "required": ["status", "position", "received_at", "receipt", "code", "text", "field", "retryable"],
    "properties": {
        "id": {"type": ["string", "null"], "description": "As far as it could be read; not said in a parcel."},
        "status": {"type": "string", "enum": [status.value for status in Status]},
        "position": {"type": ["integer", "null"], "minimum": 1},
        "received_at": {"type": ["string", "null"], "format": "date-time"},
        "receipt": {"type": ["string", "null"], "description": "The server's word that it took the record: keep it."},
        "code": {"type": ["string", "null"]},
        "text": {"type": ["string", "null"]},
        "field": {"type": ["string", "null"]},
        "retryable": {"type": ["boolean", "null"]},
    },
}

RUN: dict[str, Any] = {
    "type": "object",
    "additionalProperties": False,
    "required": ["after", "cursor", "more"],
    "properties": {
        "after": {"type": "string", "description": "The pull cursor at which the run begins."},
        "cursor": {"type": "string", "description": "The pull cursor at which it ends."},
        "more": {"type": "boolean", "description": "The feed went on behind it."},
    },
}

ANSWER: dict[str, Any] = {
    "type": "object",
    "additionalProperties": False,
    "required": ["server_time", "wipe", "runs", "results"],
    "properties": {
        "server_time": {"type": "string", "format": "date-time"},
        "parcel": {"type": "string", "description": "The digest of the parcel that this answers, in its order."},
        "wipe": {"type": "boolean", "description": "The device was revoked: send what waits, say last, then wipe."},
        "runs": {
            "type": "array",
            "items": RUN,
            "description": "Stretches of the feed that hold nothing but records of this answer.",
        },
        "results": {"type": "array", "items": RESULT},
    },
}
