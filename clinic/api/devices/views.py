"""``GET /api/v1/devices``, and ``PATCH`` and ``DELETE /api/v1/devices/{device}``."""

from __future__ import annotations

from typing import Any, Final
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.membership import person, trusted_device
from clinic.api.refusals import Refusal
from clinic.audit.facts import facts_of
from clinic.devices import register
from clinic.devices.models import Device
from clinic.errors.shape import Error

LONGEST_NAME: Final = Device._meta.get_field("name").max_length  # noqa: SLF001 - Django's documented way


class OwnDeviceSerializer(serializers.Serializer[Any]):
    """One of the person's devices."""

    id = serializers.UUIDField(source="device_id")
    name = serializers.CharField()
    registered_at = serializers.DateTimeField()
    last_seen_at = serializers.DateTimeField(help_text="To the minute.")
    revoked_at = serializers.DateTimeField(allow_null=True)
    closed_at = serializers.DateTimeField(allow_null=True, help_text="When a revoked one said that it had sent all.")
    this = serializers.BooleanField(help_text="Whether it is the device that asks.")


class OwnDevicesSerializer(serializers.Serializer[Any]):
    """All of them."""

    devices = OwnDeviceSerializer(many=True)


class NameSerializer(serializers.Serializer[Any]):
    """What a person calls a device."""

    name = serializers.CharField(max_length=LONGEST_NAME, help_text="What people call it.")


class DevicesView(APIView):
    """The devices of whoever asks."""

    @extend_schema(operation_id="devices", responses=OwnDevicesSerializer)
    def get(self, request: Request) -> Response:
        """The devices that the person ever signed in from, the one seen last first."""
        return Response(_devices(request, trusted_device(request)))


class DeviceView(APIView):
    """One of them."""

    @extend_schema(operation_id="rename_device", request=NameSerializer, responses={200: OwnDevicesSerializer})
    def patch(self, request: Request, device: UUID) -> Response:
        """Call it something that tells it from the others."""
        asking = trusted_device(request)
        found = _own(request, device)
        given = NameSerializer(data=request.data)
        given.is_valid(raise_exception=True)
        register.rename(found, given.validated_data["name"])
        return Response(_devices(request, asking))

    @extend_schema(operation_id="revoke_device", request=None, responses={200: OwnDevicesSerializer})
    def delete(self, request: Request, device: UUID) -> Response:
        """Revoke it; the one that asks may revoke itself."""
        asking = trusted_device(request)
        register.revoke(_own(request, device), now=timezone.now())
        return Response(_devices(request, asking))


def _own(request: Request, device: UUID) -> Device:
    """The person's device of that id, named in the audit trail."""
    found = register.held(person(request), device)
    if found is None:
        raise Refusal(404, Error(code="device_unknown", text="You have no such device.", field="device"))
    facts_of(request).name(records=(device,))
    return found


def _devices(request: Request, asking: Device) -> dict[str, object]:
    devices = register.of(person(request))
    rows = [{**vars(device), "this": device.pk == asking.pk} for device in devices]
    return dict(OwnDevicesSerializer({"devices": rows}).data)
