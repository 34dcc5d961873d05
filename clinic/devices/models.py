"""Device: one phone or tablet in one person's hands, and the keys that the clinic keeps for it."""

from __future__ import annotations

from typing import ClassVar

from django.conf import settings
from django.db import models

from clinic.people.models import Clinic


class Device(models.Model):
    """A device that a person signed in from.

    ``device_id`` is a UUID that the device made for itself. A tablet that several people sign in from has a row for
    each of them, so nobody can take over, rename or revoke another person's device by signing in with its id.
    A revoked one may still send what it holds, until it has said that this was its last
    (``closed_at``) or its days are over.
    """

    device_id = models.UUIDField()
    user = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="devices")
    name = models.CharField(max_length=80)
    registered_at = models.DateTimeField()
    last_seen_at = models.DateTimeField()
    revoked_at = models.DateTimeField(null=True, blank=True)
    closed_at = models.DateTimeField(null=True, blank=True)

    class Meta:
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["user", "device_id"], name="one_row_per_person_and_device")
        ]

    def __str__(self) -> str:
        return self.name


class CarryingKey(models.Model):
    """What a device seals its records with when they are handed over by a file; the device has it too, nobody else."""

    device = models.OneToOneField(Device, on_delete=models.CASCADE, related_name="carrying_key")
    key = models.CharField(max_length=64)

    def __str__(self) -> str:
        return f"carrying key of {self.device}"


class RecoveryKey(models.Model):
    """One half of the way back for a person who forgot the PIN of a device; the other half lies on the device.

    ``key`` opens the copy of the data key that the device holds under the name ``key_id``. It opens nothing else: the
    clinic cannot read a device with it, and a device cannot open its copy without it.
    """

    device = models.ForeignKey(Device, on_delete=models.CASCADE, related_name="recovery_keys")
    clinic = models.ForeignKey(Clinic, on_delete=models.CASCADE, related_name="+")
    key_id = models.CharField(max_length=32)
    key = models.CharField(max_length=64)

    class Meta:
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["device", "clinic"], name="one_recovery_key_per_device_and_clinic")
        ]

    def __str__(self) -> str:
        return f"recovery key of {self.device}"
