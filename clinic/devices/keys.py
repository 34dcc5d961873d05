"""The keys that the clinic keeps for a device: one to know its records by, one to open it again by."""

from __future__ import annotations

import hashlib
import hmac
import secrets
from uuid import UUID

from clinic.devices.models import CarryingKey, Device, RecoveryKey

KEY_BYTES = 32


def carrying_key(device: Device) -> str:
    """The key that the device seals what it hands over with, made when it is first asked for."""
    found, _ = CarryingKey.objects.get_or_create(device=device, defaults={"key": secrets.token_hex(KEY_BYTES)})
    return found.key


def sealed_by(device: Device, text: str, tag: str) -> bool:
    """Whether ``tag`` is the device's own seal (HMAC-SHA-256) of ``text``."""
    known = CarryingKey.objects.filter(device=device).first()
    if known is None:
        return False
    made = hmac.new(bytes.fromhex(known.key), text.encode(), hashlib.sha256).hexdigest()
    return hmac.compare_digest(made, tag)


def keep_recovery_key(device: Device, clinic: UUID, *, key_id: str, key: str) -> None:
    """The newest is the one that counts."""
    RecoveryKey.objects.update_or_create(device=device, clinic_id=clinic, defaults={"key_id": key_id, "key": key})


def recovery_key(device: Device, clinic: UUID) -> RecoveryKey | None:
    """What the device left here."""
    return RecoveryKey.objects.filter(device=device, clinic=clinic).first()
