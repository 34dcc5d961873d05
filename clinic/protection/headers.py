"""Security headers on every response, static files and redirects included.

The content policy lets the app load scripts, styles, images and data from its own origin only, with nothing inline and
no evaluation. The one exception is the script of the engine's worker, whose own response may also compile WebAssembly:
a worker has the policy of the response it came in, so the page stays strict.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from django.http import HttpRequest, HttpResponseBase

ENGINE_WORKER = re.compile(r"/static/app/[^/]+/engine/worker\.js")


def content_policy(*, script: str) -> str:
    """The policy with the given ``script-src``."""
    return "; ".join(
        (
            "default-src 'none'",
            f"script-src {script}",
            "style-src 'self'",
            "img-src 'self' data: blob:",
            "font-src 'self'",
            "connect-src 'self'",
            "worker-src 'self'",
            "manifest-src 'self'",
            "frame-src 'self' blob:",
            "object-src 'none'",
            "base-uri 'none'",
            "form-action 'self'",
            "frame-ancestors 'none'",
        )
    )


STRICT = content_policy(script="'self'")
WITH_WEBASSEMBLY = content_policy(script="'self' 'wasm-unsafe-eval'")

UNUSED_FEATURES = ("geolocation", "microphone", "payment", "usb", "serial", "midi", "display-capture")
PERMISSIONS = ", ".join((*(f"{feature}=()" for feature in UNUSED_FEATURES), "camera=(self)"))


class SecurityHeaders:
    """Middleware; a header that a view has set itself is left as it is."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """The response, with the headers."""
        response = self.get_response(request)
        worker = ENGINE_WORKER.fullmatch(request.path_info)
        response.headers.setdefault("Content-Security-Policy", WITH_WEBASSEMBLY if worker else STRICT)
        response.headers.setdefault("Permissions-Policy", PERMISSIONS)
        response.headers.setdefault("Cross-Origin-Resource-Policy", "same-origin")
        if request.path_info.startswith("/api/"):
            response.headers.setdefault("Cache-Control", "no-store")
        return response
