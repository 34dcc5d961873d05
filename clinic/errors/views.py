"""What Django calls when no view of the API answers; it passes the arguments by these names."""

from __future__ import annotations

from django.http import HttpRequest, JsonResponse
from django.utils.translation import gettext

from clinic.errors.shape import Error, answer


def bad_request(request: HttpRequest, exception: Exception) -> JsonResponse:  # noqa: ARG001
    """400."""
    return answer(400, Error(code="bad_request", text="The request cannot be understood."))


def forbidden(request: HttpRequest, exception: Exception) -> JsonResponse:  # noqa: ARG001
    """403."""
    return answer(403, Error(code="forbidden", text=gettext("This account may not do that.")))


def not_found(request: HttpRequest, exception: Exception) -> JsonResponse:  # noqa: ARG001
    """404."""
    return answer(404, Error(code="not_found", text="There is nothing at this address."))


def server_fault(_request: HttpRequest) -> JsonResponse:
    """500."""
    text = gettext("The server failed. Nothing was lost; try again later.")
    return answer(500, Error(code="server_fault", text=text))


def csrf_failed(request: HttpRequest, reason: str = "") -> JsonResponse:  # noqa: ARG001
    """403 for a write without the token."""
    return answer(403, Error(code="csrf_failed", text="The page is out of date. Fetch the session and try again."))
