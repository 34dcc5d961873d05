"""An app too old for the protocol is told so before it sends anything; what it fetches it may go on reading."""

from __future__ import annotations

import re
from collections.abc import Callable

from django.conf import settings
from django.http import HttpRequest, HttpResponseBase

from clinic.errors.shape import Error, answer

PUSH = re.compile(r"/api/v1/clinics/[^/]+/push")
NUMBER = re.compile(r"[0-9]{1,9}")


class ClientAge:
    """Middleware that answers 426 to a push whose ``X-Client`` is below ``MINIMUM_CLIENT``.

    Signing in, pulling and cards stay open to it: nobody shall stand in theatre without today's plans.
    A caller that sends no ``X-Client`` is no app.
    """

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """426, or the response."""
        told = request.headers.get("X-Client")
        if told is None or not PUSH.fullmatch(request.path) or _is_new_enough(told):
            return self.get_response(request)
        return answer(
            426,
            Error(
                code="client_too_old",
                text="This version of the app is too old to send. Update it; what it holds stays safe and readable.",
                field="X-Client",
                value=told[:20],
                allowed=f"{settings.MINIMUM_CLIENT} or newer",
            ),
        )


def _is_new_enough(told: str) -> bool:
    return bool(NUMBER.fullmatch(told)) and int(told) >= settings.MINIMUM_CLIENT
