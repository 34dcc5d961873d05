"""Receipts: the server's own word that it once took a record, which any device can bring back with it.

A ledger that was restored from a backup lacks what came after it. A device may still hold such a record of another
person or device, and could not prove that it is genuine; the receipt does. It is the first 16 bytes of an HMAC-SHA256
over the envelope (the body is in it by its digest), in base64url without padding, under a key that is derived from the
server's ``SECRET_KEY`` and is not in the database, so it outlives a restore. Nothing can be read from it, and nobody
who lacks the key can make one.

When the secret is changed, the former one goes to ``CLINIC_SECRET_KEY_FALLBACKS`` for as long as a device may hold
what was receipted under it.
"""

from __future__ import annotations

import base64
import hashlib
import hmac
from functools import cache
from json import JSONEncoder

from django.conf import settings
from django.utils.crypto import constant_time_compare

from clinic.sync.envelope import Envelope

PURPOSE = "clinic.sync.receipt.1"
BYTES = 16
WRITER = JSONEncoder(sort_keys=True, separators=(",", ":"))


def receipt_of(envelope: Envelope) -> str:
    """The receipt for a record that is in the ledger."""
    return _made(envelope, str(settings.SECRET_KEY))


def is_genuine(receipt: str, envelope: Envelope) -> bool:
    """Whether this server once gave the receipt for the record of that envelope."""
    secrets: list[str] = [str(settings.SECRET_KEY), *settings.SECRET_KEY_FALLBACKS]
    return any(constant_time_compare(receipt, _made(envelope, secret)) for secret in secrets)


def _made(envelope: Envelope, secret: str) -> str:
    facts = vars(envelope) | {"supersedes": sorted(envelope.supersedes)}
    made = hmac.digest(_key(secret), WRITER.encode(facts).encode(), "sha256")
    return base64.urlsafe_b64encode(made[:BYTES]).decode().rstrip("=")


@cache
def _key(secret: str) -> bytes:
    """As the framework derives a key for one purpose from its secret (``salted_hmac``)."""
    return hashlib.sha256(PURPOSE.encode() + secret.encode()).digest()
