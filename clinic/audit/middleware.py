"""Writes the entry of a call before its answer leaves."""

from __future__ import annotations

import logging
from collections.abc import Callable
from uuid import UUID

from django.db import DatabaseError
from django.http import HttpRequest, HttpResponseBase
from django.utils import timezone

from clinic.audit.facts import Facts, facts_of
from clinic.audit.models import Entry
from clinic.devices.register import SESSION_DEVICE
from clinic.errors.shape import Error, answer

PLACES = ("/api/", "/administration/")
SIGN_IN = "POST api/v1/session"
UNTOLD = {"GET api/v1/session", "GET api/v1/schema"}
UNAUTHORISED = 401

log = logging.getLogger(__name__)


class Audit:
    """Middleware; the sessions and accounts must come before it."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """The response; 503 when its entry cannot be written, for nobody reads unseen."""
        if not request.path_info.startswith(PLACES):
            return self.get_response(request)
        who, device = request.user.get_username(), request.session.get(SESSION_DEVICE)
        response = self.get_response(request)
        facts = facts_of(request)
        who = who or request.user.get_username() or facts.who
        call = _call(request)
        if call in UNTOLD or facts.handed_out_nothing or _is_stranger(call, who, response):
            return response
        try:
            _entry(request, response, facts, who=who, device=device or request.session.get(SESSION_DEVICE)).save()
        except DatabaseError:
            log.exception("the audit trail cannot be written")
            return answer(503, Error(code="unavailable", text="The server cannot reach its database. Try again later."))
        return response


def _call(request: HttpRequest) -> str:
    route = request.resolver_match.route if request.resolver_match else "no such address"
    return f"{request.method} {route}"[:120]


def _is_stranger(call: str, who: str, response: HttpResponseBase) -> bool:
    return not who and call != SIGN_IN and response.status_code >= UNAUTHORISED


def _entry(request: HttpRequest, response: HttpResponseBase, facts: Facts, *, who: str, device: str | None) -> Entry:
    named = request.resolver_match.kwargs if request.resolver_match else {}
    first, last = facts.positions or (None, None)
    clinic = named.get("clinic")
    return Entry(
        at=timezone.now(),
        who=who[:60],
        device=UUID(device) if device else None,
        clinic=clinic if isinstance(clinic, UUID) else None,
        call=_call(request),
        status=response.status_code,
        code=_code(response),
        first_position=first,
        last_position=last,
        records=" ".join(facts.records),
        patients=" ".join(facts.patients),
    )


def _code(response: HttpResponseBase) -> str:
    data = getattr(response, "data", None)
    errors = data.get("errors") if isinstance(data, dict) else None
    return str(errors[0]["code"])[:40] if errors else ""
