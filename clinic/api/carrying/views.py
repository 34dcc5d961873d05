"""``GET /api/v1/carrying``."""

from __future__ import annotations

from typing import Any

from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.membership import trusted_device
from clinic.devices.keys import carrying_key


class CarryingKeySerializer(serializers.Serializer[Any]):
    """The key."""

    key = serializers.CharField(help_text="256 bits in lower-case hexadecimal, for HMAC-SHA-256.")


class CarryingView(APIView):
    """The carrying key of the device that asks; see :mod:`clinic.api.carrying`."""

    @extend_schema(
        operation_id="carrying_key",
        responses=CarryingKeySerializer,
        description="The key that this device seals its records with when they are handed over by a file.",
    )
    def get(self, request: Request) -> Response:
        """The same at each asking."""
        return Response({"key": carrying_key(trusted_device(request))})
