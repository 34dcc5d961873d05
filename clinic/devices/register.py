"""Who holds which device, and when it was last heard from."""

from __future__ import annotations

from datetime import datetime, timedelta
from uuid import UUID

from django.db.models import Q

from clinic.devices.models import Device
from clinic.people.models import User

SEEN_EVERY = timedelta(minutes=1)
"""A pull is a read; it writes the time of the visit no more often than this."""


def register(user: User, device_id: UUID, name: str, *, now: datetime) -> Device:
    """The person's device, made known or given its present name; a revoked one stays revoked."""
    device, _ = Device.objects.update_or_create(
        user=user,
        device_id=device_id,
        defaults={"name": name, "last_seen_at": now},
        create_defaults={"name": name, "registered_at": now, "last_seen_at": now},
    )
    return device


def held(user: User, device_id: UUID) -> Device | None:
    """The device, when this person signed in from it before."""
    return Device.objects.filter(user=user, device_id=device_id).first()


def seen(device: Device, *, now: datetime) -> None:
    """Note the visit."""
    stale = Q(last_seen_at__lt=now - SEEN_EVERY)
    if now - device.last_seen_at > SEEN_EVERY:
        Device.objects.filter(stale, pk=device.pk).update(last_seen_at=now)
