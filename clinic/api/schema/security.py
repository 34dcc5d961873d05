"""How the OpenAPI description speaks of the session."""

from __future__ import annotations

from django.conf import settings
from drf_spectacular.extensions import OpenApiAuthenticationExtension
from drf_spectacular.openapi import AutoSchema


class SessionCookieScheme(OpenApiAuthenticationExtension):  # type: ignore[no-untyped-call]
    """The session cookie; writes also carry the token that the session answered in ``X-CSRFToken``."""

    target_class = "clinic.api.authentication.SessionCookie"
    name = "session"

    def get_security_definition(self, auto_schema: AutoSchema) -> dict[str, str]:  # noqa: ARG002
        """An API key in a cookie, in OpenAPI's words."""
        return {"type": "apiKey", "in": "cookie", "name": settings.SESSION_COOKIE_NAME}
