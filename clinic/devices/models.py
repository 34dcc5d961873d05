"""Device: one phone or tablet in one person's hands."""

from __future__ import annotations

from typing import ClassVar

from django.conf import settings
from django.db import models


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
