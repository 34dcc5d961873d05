"""The record inside its main resource: an extension with its envelope and the canonical text of its body."""

from __future__ import annotations

from planner.canonical import canonical
from planner.codec import parse
from planner.exchange.fhir.ledger import Told, told
from planner.exchange.fhir.names import RECORD, Resource

PLAIN = ("kind", "clinic", "patient", "author", "device", "recorded_at", "digest")


def carried(record: Told) -> Resource:
    """The extension."""
    envelope = record.envelope
    return {
        "url": RECORD,
        "extension": [
            *({"url": name.replace("_", "-"), "valueString": getattr(envelope, name)} for name in PLAIN),
            *({"url": "supersedes", "valueString": old} for old in envelope.supersedes),
            {"url": "body", "valueString": canonical(record.body)},
        ],
    }


def carries(resource: Resource) -> bool:
    """Whether a resource claims to carry a record."""
    return _extension(resource) is not None


def record_in(resource: Resource) -> Told:
    """The record that a resource carries; :class:`planner.errors.Refused` if it is none, or was altered."""
    extension = _extension(resource) or {}
    parts = extension.get("extension")
    said: dict[str, object] = {"id": resource.get("id"), "supersedes": []}
    olds = []
    for part in parts if isinstance(parts, list) else []:
        name, value = (part.get("url"), part.get("valueString")) if isinstance(part, dict) else (None, None)
        if name == "supersedes":
            olds.append(value)
        elif name == "body" and isinstance(value, str):
            said["body"] = parse(value)
        elif isinstance(name, str):
            said[name.replace("-", "_")] = value
    return told(said | {"supersedes": olds})


def _extension(resource: Resource) -> Resource | None:
    extensions = resource.get("extension")
    if not isinstance(extensions, list):
        return None
    return next((each for each in extensions if isinstance(each, dict) and each.get("url") == RECORD), None)
