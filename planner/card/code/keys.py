"""A clinic's card keys, and the seal that is made with one."""

from __future__ import annotations

import hashlib
import hmac
from typing import Annotated

from planner.limits import Pattern

CardKey = Annotated[str, Pattern(r"[0-9a-f]{64}", "32 bytes in lower-case hexadecimal")]

ID_BYTES = 4
SEAL_BYTES = 12
"""96 of HMAC-SHA256's 256 bits; RFC 2104 wants at least half of the hash or 80 bits."""


def key_id(key: CardKey) -> bytes:
    """Which key it is, told without telling the key."""
    return hashlib.sha256(b"card key id" + bytes.fromhex(key)).digest()[:ID_BYTES]


def seal(key: CardKey, sealed: bytes) -> bytes:
    """What only a member of the clinic can make of ``sealed``."""
    return hmac.new(bytes.fromhex(key), sealed, hashlib.sha256).digest()[:SEAL_BYTES]


def is_sealed(key: CardKey, sealed: bytes, found: bytes) -> bool:
    """Whether ``found`` is the seal."""
    return hmac.compare_digest(seal(key, sealed), found)
