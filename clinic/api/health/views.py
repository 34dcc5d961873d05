"""``GET /health``."""

from __future__ import annotations

from django.db import DatabaseError, connection
from drf_spectacular.utils import extend_schema, inline_serializer
from rest_framework import serializers
from rest_framework.permissions import AllowAny
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.refusals import Unavailable


class HealthView(APIView):
    """200 when the database answers, else 503."""

    authentication_classes = ()
    permission_classes = (AllowAny,)

    @extend_schema(
        operation_id="health",
        responses=inline_serializer("Health", {"status": serializers.ChoiceField(choices=["ok"])}),
        auth=[],
    )
    def get(self, _request: Request) -> Response:
        """Whether the server answers."""
        try:
            with connection.cursor() as cursor:
                cursor.execute("SELECT 1")
        except DatabaseError as error:
            raise Unavailable from error
        return Response({"status": "ok"})
