"""Who holds which device, and when it was last heard from."""

from __future__ import annotations

from datetime import datetime, timedelta
from uuid import UUID

from django.conf import settings
from django.db.models import Q

from clinic.devices.models import Device, RecoveryKey
from clinic.people.models import User

SESSION_DEVICE = "device"
"""Where a session keeps the id of the device that it was opened on."""

SIGNED_IN_AT = "signed_in_at"
"""Where a session keeps the moment at which the person signed in."""

SEEN_EVERY = timedelta(minutes=1)
"""A pull is a read; it writes the time of the visit no more often than this."""


def register(user: User, device_id: UUID, name: str, *, now: datetime) -> Device:
    """The person's device, made known under ``name``; a known one keeps its own, and a revoked one stays revoked."""
    device, _ = Device.objects.update_or_create(
        user=user,
        device_id=device_id,
        defaults={"last_seen_at": now},
        create_defaults={"name": name, "registered_at": now, "last_seen_at": now},
    )
    return device


def held(user: User, device_id: UUID) -> Device | None:
    """The device, when this person signed in from it before."""
    return Device.objects.filter(user=user, device_id=device_id).first()


def of(user: User) -> list[Device]:
    """All devices of a person, the one seen last first."""
    return list(Device.objects.filter(user=user).order_by("-last_seen_at", "pk"))


def rename(device: Device, name: str) -> None:
    """What its person calls it from now on."""
    device.name = name
    device.save(update_fields=["name"])


def revoke(device: Device, *, now: datetime) -> None:
    """From now on the device gets nothing more, the key to open it included; a second time changes nothing."""
    Device.objects.filter(pk=device.pk, revoked_at=None).update(revoked_at=now)
    device.refresh_from_db(fields=["revoked_at"])
    RecoveryKey.objects.filter(device=device).delete()


def close(device: Device, *, now: datetime) -> None:
    """The revoked device has sent its last."""
    Device.objects.filter(pk=device.pk, closed_at=None).exclude(revoked_at=None).update(closed_at=now)


def is_closed(device: Device, *, now: datetime) -> bool:
    """Whether a revoked device has sent its last, or its days for sending are over."""
    if device.revoked_at is None:
        return False
    return device.closed_at is not None or now - device.revoked_at > timedelta(days=settings.REVOKED_DAYS)


def seen(device: Device, *, now: datetime) -> None:
    """Note the visit."""
    stale = Q(last_seen_at__lt=now - SEEN_EVERY)
    if now - device.last_seen_at > SEEN_EVERY:
        Device.objects.filter(stale, pk=device.pk).update(last_seen_at=now)
