"""No request body beyond the limit is read, and none of unknown length."""

from __future__ import annotations

import re
from collections.abc import Callable

from django.conf import settings
from django.http import HttpRequest, HttpResponseBase

from clinic.errors.shape import Error, answer

LENGTH = re.compile(r"[0-9]{1,18}")


class BodyLimit:
    """Middleware that answers 413 from the announced length alone, before anything reads the body."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """413, or the response.

        A server hands over no more bytes than the announced length; a body without one reads as empty.
        """
        length = request.META.get("CONTENT_LENGTH") or "0"
        if not LENGTH.fullmatch(length):
            return answer(400, Error(code="bad_length", text="The request's length is not a number."))
        if int(length) > settings.BODY_LIMIT:
            return answer(
                413,
                Error(
                    code="body_too_large",
                    text="The request is too large. Send fewer records at a time.",
                    value=length,
                    allowed=f"at most {settings.BODY_LIMIT} bytes",
                ),
            )
        return self.get_response(request)
