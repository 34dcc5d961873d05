"""The session cookie, with the CSRF token demanded of every write, that of a stranger who signs in included."""

from __future__ import annotations

from typing import Any

from rest_framework.authentication import SessionAuthentication
from rest_framework.exceptions import PermissionDenied
from rest_framework.request import Request

from clinic.api.refusals import Refusal
from clinic.errors.shape import Error


class SessionCookie(SessionAuthentication):
    """As the framework's, but 401 (not 403) tells the app to sign in again, and nobody writes without a token."""

    def authenticate(self, request: Request) -> tuple[Any, None] | None:
        """The signed-in person, or None."""
        self.enforce_csrf(request)
        user = getattr(request._request, "user", None)  # noqa: SLF001 - Django's own request, as the parent reads it
        return (user, None) if user and user.is_active else None

    def authenticate_header(self, request: Request) -> str:  # noqa: ARG002
        """What makes the framework answer 401."""
        return "Session"

    def enforce_csrf(self, request: Request) -> None:
        """403 ``csrf_failed`` unless the token fits; reads need none. A body that cannot be read is refused as such."""
        try:
            super().enforce_csrf(request)
        except PermissionDenied as error:
            raise Refusal(
                403, Error(code="csrf_failed", text="The page is out of date. Fetch the session and try again.")
            ) from error
