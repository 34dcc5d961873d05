"""``GET /health`` and ``GET /ready``."""

from __future__ import annotations

from django.db import DatabaseError, connection
from django.db.migrations.executor import MigrationExecutor
from drf_spectacular.utils import extend_schema, inline_serializer
from rest_framework import serializers
from rest_framework.permissions import AllowAny
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.refusals import Refusal, Unavailable
from clinic.audit.guards import KEYS as AUDITED
from clinic.errors.shape import Error
from clinic.ledger import guards


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


class ReadyView(APIView):
    """200 when this process may be given work: the tables are those that it knows, and the guards stand; else 503."""

    authentication_classes = ()
    permission_classes = (AllowAny,)

    @extend_schema(
        operation_id="ready",
        responses=inline_serializer("Ready", {"status": serializers.ChoiceField(choices=["ready"])}),
        auth=[],
    )
    def get(self, _request: Request) -> Response:
        """Whether the server may be given work."""
        try:
            executor = MigrationExecutor(connection)
            behind = executor.migration_plan(executor.loader.graph.leaf_nodes())
            unguarded = guards.missing(connection) + guards.missing(connection, AUDITED)
        except DatabaseError as error:
            raise Unavailable from error
        if behind:
            raise Refusal(503, Error(code="not_migrated", text="The database is not up to date: manage.py migrate."))
        if unguarded:
            raise Refusal(503, Error(code="not_guarded", text="The database lacks guards: manage.py check."))
        return Response({"status": "ready"})
