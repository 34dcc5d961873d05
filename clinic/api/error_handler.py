"""Exceptions of the API to the one error shape; what is not known here is a server fault."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from django.core.exceptions import PermissionDenied
from django.db import OperationalError
from django.http import Http404, HttpResponseBase
from rest_framework import exceptions
from rest_framework.response import Response

from clinic.api.refusals import Refusal, Unavailable
from clinic.errors import shape
from clinic.errors.shape import Error
from planner.errors import Refused

TEXTS = {
    "not_authenticated": "Sign in first.",
    "authentication_failed": "The session has ended. Sign in again.",
    "permission_denied": "This account may not do that.",
    "not_found": "There is nothing at this address.",
    "method_not_allowed": "This address does not answer that method.",
    "not_acceptable": "The answer is JSON and nothing else.",
    "unsupported_media_type": "The body must be JSON, with Content-Type application/json.",
    "throttled": "Too many tries. Wait, then try again.",
}


def answer(exception: Exception, _context: dict[str, Any]) -> HttpResponseBase | None:
    """The response for ``exception``, or None for one that nobody foresaw (Django then logs it and answers 500)."""
    match exception:
        case Refusal():
            return _response(exception.status, *exception.errors, headers=exception.headers)
        case Refused():
            return _response(400, *map(shape.from_fault, exception.faults))
        case exceptions.ValidationError():
            return _response(400, *_validation_errors(exception.detail, exception.get_codes()))
        case exceptions.APIException():
            return _api_exception(exception)
        case Http404():
            return _response(404, Error(code="not_found", text=TEXTS["not_found"]))
        case PermissionDenied():
            return _response(403, Error(code="permission_denied", text=TEXTS["permission_denied"]))
        case OperationalError():
            unavailable = Unavailable()
            return _response(unavailable.status, *unavailable.errors)
        case _:
            return None


def _response(status: int, *errors: Error, headers: dict[str, str] | None = None) -> Response:
    return Response(shape.body(*errors), status=status, headers=headers)


def _api_exception(exception: exceptions.APIException) -> Response:
    code = str(exception.get_codes())
    headers = {}
    if challenge := getattr(exception, "auth_header", None):
        headers["WWW-Authenticate"] = challenge
    if (wait := getattr(exception, "wait", None)) is not None:
        headers["Retry-After"] = str(int(wait) + 1)
    text = TEXTS.get(code) or str(exception.detail)
    return _response(exception.status_code, Error(code=code, text=text), headers=headers)


def _validation_errors(detail: Any, codes: Any, path: str = "") -> Iterator[Error]:  # noqa: ANN401 - nested by input
    match detail:
        case dict():
            for name, inner in detail.items():
                field = path if name == "non_field_errors" else f"{path}.{name}".lstrip(".")
                yield from _validation_errors(inner, codes[name], field)
        case list():
            for place, inner in enumerate(detail):
                nested = isinstance(inner, dict | list)
                yield from _validation_errors(inner, codes[place], f"{path}.{place}".lstrip(".") if nested else path)
        case _:
            yield Error(code=str(codes), text=str(detail), field=path)
