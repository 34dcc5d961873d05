"""Counts every call that reaches a view; static files are the proxy's to count."""

from __future__ import annotations

import time
from collections.abc import Callable

from django.http import HttpRequest, HttpResponseBase

from clinic.metrics.figures import CALLS, SECONDS

METHODS = {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"}


class Metrics:
    """Middleware."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """The response, counted under its route: what a stranger makes up does not become a label."""
        started = time.perf_counter()
        response = self.get_response(request)
        route = request.resolver_match.route if request.resolver_match else "none"
        method = request.method if request.method in METHODS else "other"
        CALLS.labels(method, route, response.status_code).inc()
        SECONDS.labels(method, route).observe(time.perf_counter() - started)
        return response
