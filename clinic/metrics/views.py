"""``GET /metrics``."""

from __future__ import annotations

import secrets

from django.conf import settings
from django.http import Http404, HttpRequest, HttpResponse
from django.views.decorators.http import require_GET
from prometheus_client import CONTENT_TYPE_LATEST, generate_latest

from clinic.metrics.figures import REGISTRY

LOOPBACK = {"127.0.0.1", "::1"}


@require_GET
def metrics(request: HttpRequest) -> HttpResponse:
    """The figures; for all others there is nothing at this address."""
    if not _may_read(request):
        raise Http404
    return HttpResponse(generate_latest(REGISTRY), content_type=CONTENT_TYPE_LATEST)


def _may_read(request: HttpRequest) -> bool:
    if settings.METRICS_TOKEN:
        told = request.headers.get("Authorization", "")
        return secrets.compare_digest(told.encode(), f"Bearer {settings.METRICS_TOKEN}".encode())
    # What a proxy passes on comes from this machine too, but carries where it came from first.
    forwarded = {"X-Forwarded-For", "Forwarded", "X-Real-Ip", "Via"} & {*request.headers}
    return request.META.get("REMOTE_ADDR") in LOOPBACK and not forwarded
