"""``PUT`` and ``GET`` of ``/api/v1/clinics/{clinic}/recovery``."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.membership import device_of, require_trusted, role_in
from clinic.api.refusals import Refusal
from clinic.devices import keys
from clinic.devices.register import SIGNED_IN_AT
from clinic.errors.shape import Error

FRESH = timedelta(minutes=5)
"""So long after signing in the key is handed out: time to choose a new PIN, not to find a phone lying about."""


class RecoveryKeySerializer(serializers.Serializer[Any]):
    """The clinic's half."""

    key_id = serializers.RegexField(r"^[0-9a-f]{32}$", help_text="Names the device's half that the key opens.")
    key = serializers.RegexField(r"^[0-9a-f]{64}$", help_text="256 random bits, made by the device.")


class LeftSerializer(serializers.Serializer[Any]):
    """Which one is kept."""

    key_id = serializers.CharField()


class LeftKeySerializer(RecoveryKeySerializer):
    """The same, with the device that leaves it."""

    device = serializers.UUIDField()


class RecoveryView(APIView):
    """The recovery key of the device that asks; see :mod:`clinic.api.recovery`."""

    @extend_schema(
        operation_id="recovery_key",
        parameters=[OpenApiParameter("device", {"type": "string", "format": "uuid"}, required=True)],
        responses=RecoveryKeySerializer,
        description="Hand out the key that this device left, right after a sign-in on it.",
    )
    def get(self, request: Request, clinic: UUID) -> Response:
        """The key, shortly after a sign-in."""
        role_in(clinic, request)
        device = device_of(request, request.query_params.get("device"))
        require_trusted(device)
        if not _is_fresh(request, timezone.now()):
            text = "Sign in again, with the password, to open this device without its PIN or passphrase."
            raise Refusal(403, Error(code="sign_in_afresh", text=text))
        found = keys.recovery_key(device, clinic)
        if found is None:
            text = "This device left nothing here that could open it."
            raise Refusal(404, Error(code="recovery_unknown", text=text, field="device"))
        return Response({"key_id": found.key_id, "key": found.key})

    @extend_schema(
        operation_id="leave_recovery_key",
        request=LeftKeySerializer,
        responses=LeftSerializer,
        description="Leave the key here, in place of an earlier one.",
    )
    def put(self, request: Request, clinic: UUID) -> Response:
        """Kept from now on."""
        role_in(clinic, request)
        given = LeftKeySerializer(data=request.data)
        given.is_valid(raise_exception=True)
        device = device_of(request, str(given.validated_data["device"]))
        require_trusted(device)
        keys.keep_recovery_key(device, clinic, key_id=given.validated_data["key_id"], key=given.validated_data["key"])
        return Response({"key_id": given.validated_data["key_id"]})


def _is_fresh(request: Request, now: datetime) -> bool:
    told = request.session.get(SIGNED_IN_AT)
    return told is not None and now - datetime.fromisoformat(told) <= FRESH
