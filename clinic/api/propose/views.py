"""``POST /api/v1/propose``."""

from __future__ import annotations

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.schema.shapes import reference
from planner.codec import read, write
from planner.proposal import propose
from planner.records.case import Case
from planner.values.proposal import Proposal


class ProposeView(APIView):
    """Asks the engine, the same code that runs on the phone."""

    @extend_schema(
        operation_id="propose",
        request={"application/json": reference(Case)},
        responses={(200, "application/json"): reference(Proposal)},
        description="Findings and options for a case. Nothing is stored.",
    )
    def post(self, request: Request) -> Response:
        """The proposal, or 400 with the engine's faults."""
        return Response(write(propose(read(Case, request.data))))
