"""Devices: when each was last seen, and revoking it."""

from __future__ import annotations

from django.contrib import admin
from django.db.models import QuerySet
from django.http import HttpRequest
from django.utils import timezone

from clinic.administration.accounts import KeptForGood
from clinic.administration.site import administration
from clinic.devices import register
from clinic.devices.models import Device


@admin.register(Device, site=administration)
class DevicePage(KeptForGood):
    """Devices make themselves known by signing in; here they are seen and revoked."""

    list_display = ("name", "user", "last_seen_at", "revoked_at", "closed_at", "device_id")
    list_filter = ("revoked_at", "last_seen_at")
    search_fields = ("name", "user__username", "user__full_name", "device_id")
    ordering = ("-last_seen_at",)
    actions = ("revoke",)

    @admin.action(description="Revoke: hand out nothing more, take what it holds, then close")
    def revoke(self, request: HttpRequest, devices: QuerySet[Device]) -> None:
        """The devices chosen."""
        now = timezone.now()
        for device in devices:
            register.revoke(device, now=now)
        self.message_user(request, f"Revoked: {len(devices)}.")

    def has_add_permission(self, request: HttpRequest) -> bool:  # noqa: ARG002
        """Never."""
        return False

    def has_change_permission(self, request: HttpRequest, obj: object = None) -> bool:
        """The list with its action, but no form."""
        return obj is None and super().has_change_permission(request)
