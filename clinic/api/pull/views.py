"""``GET /api/v1/clinics/{clinic}/pull``."""

from __future__ import annotations

import json
from typing import Any
from uuid import UUID

from django.http import HttpResponse
from django.utils import timezone
from django.utils.decorators import method_decorator
from django.views.decorators.gzip import gzip_page
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework.request import Request
from rest_framework.views import APIView

from clinic.api.membership import device_of, require_trusted, role_in
from clinic.api.pace import SyncPace
from clinic.api.refusals import Refusal
from clinic.audit.facts import facts_of
from clinic.errors.shape import Error
from clinic.people.role import Role
from clinic.sync.protocol import MOST_PULLED, USUALLY_PULLED
from clinic.sync.pull import Page, pull, written
from clinic.sync.scope import READ_EVERYTHING

ANSWER: dict[str, Any] = {
    "type": "object",
    "additionalProperties": False,
    "required": ["server_time", "records", "removed", "cursor", "more", "reset", "restored"],
    "properties": {
        "server_time": {"type": "string", "format": "date-time"},
        "records": {"type": "array", "items": {"$ref": "#/components/schemas/StoredRecord"}},
        "removed": {
            "type": "array",
            "items": {"type": "string", "format": "uuid"},
            "description": "Ids of records that the device may no longer hold; it may never have had some of them.",
        },
        "cursor": {"type": "string", "description": "To ask with next; empty with reset."},
        "more": {"type": "boolean"},
        "reset": {"type": "boolean", "description": "The cursor means nothing here: begin again, keep the outbox."},
        "restored": {
            "type": "boolean",
            "description": "With reset: the ledger may lack what the device holds; offer it with its receipts.",
        },
    },
}

PARAMETERS = [
    OpenApiParameter("device", {"type": "string", "format": "uuid"}, required=True),
    OpenApiParameter("after", str, description="The cursor of the last answer; without it, from the beginning."),
    OpenApiParameter(
        "limit", {"type": "integer", "minimum": 1, "maximum": MOST_PULLED, "default": USUALLY_PULLED}, required=False
    ),
]


class PullView(APIView):
    """Hands out records; see :mod:`clinic.sync.protocol`."""

    throttle_classes = (SyncPace,)

    @extend_schema(
        operation_id="pull",
        parameters=PARAMETERS,
        responses={(200, "application/json"): ANSWER},
        description="Fetch the records after a cursor, in feed order.",
    )
    @method_decorator(gzip_page)
    def get(self, request: Request, clinic: UUID) -> HttpResponse:
        """A page of the feed. Bodies are copied from the ledger as text, not parsed and written again."""
        role = role_in(clinic, request)
        require_trusted(device_of(request, request.query_params.get("device")))
        limit = _limit(request.query_params.get("limit", str(USUALLY_PULLED)))
        now = timezone.now()
        page = pull(clinic, role, after=request.query_params.get("after", ""), limit=limit, now=now)
        _note(request, role, page)
        facts = {"server_time": now.isoformat(), "cursor": page.cursor, "more": page.more, "reset": page.reset}
        facts["restored"] = page.restored
        facts["removed"] = list(map(str, page.removed))
        text = f'{json.dumps(facts)[:-1]}, "records": {written(page.records)}}}'
        return HttpResponse(text, content_type="application/json")


def _note(request: Request, role: Role, page: Page) -> None:
    facts = facts_of(request)
    facts.handed_out_nothing = not page.records
    if role in READ_EVERYTHING:
        facts.cover(record.position for record in page.records)
    else:
        facts.name(records=(record.pk for record in page.records), patients=(record.patient for record in page.records))


def _limit(told: str) -> int:
    if told.isascii() and told.isdigit() and len(told) <= len(str(MOST_PULLED)) and 1 <= int(told) <= MOST_PULLED:
        return int(told)
    error = Error(
        code="out_of_range",
        text="The limit is not a number in the allowed range.",
        field="limit",
        value=told[:40],
        allowed=f"a whole number from 1 to {MOST_PULLED}",
    )
    raise Refusal(400, error)
