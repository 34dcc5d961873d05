"""``/``, ``/sw.js`` and ``/manifest.webmanifest``: always asked for anew (``no-cache``), cheaply by ETag.

They belong to one release: the page names its folder, and the service worker carries its list of files.
"""

from __future__ import annotations

import json
from dataclasses import asdict
from typing import TYPE_CHECKING

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import render
from django.views.decorators.cache import cache_control
from django.views.decorators.http import condition, require_safe

from clinic.build.folders import folders
from clinic.build.release import SERVICE_WORKER
from clinic.shell.manifest import manifest
from clinic.shell.release import NotBuilt, current_release

if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any


def _etag(request: HttpRequest) -> str | None:
    try:
        return f'"{current_release().name}{request.path}"'
    except NotBuilt:
        return None


def _root(view: Callable[[HttpRequest], HttpResponse]) -> Any:  # noqa: ANN401 - the type of a decorated view
    """What all three have in common."""
    return require_safe(cache_control(no_cache=True)(condition(etag_func=_etag)(_built(view))))


def _built(view: Callable[[HttpRequest], HttpResponse]) -> Callable[[HttpRequest], HttpResponse]:
    def answer(request: HttpRequest) -> HttpResponse:
        try:
            return view(request)
        except NotBuilt as error:
            return HttpResponse(f"{error}\n", status=503, content_type="text/plain; charset=utf-8")

    return answer


@_root
def index(request: HttpRequest) -> HttpResponse:
    """The one page of the app."""
    return render(request, "shell/index.html", {"release": current_release()})


@_root
def service_worker(_request: HttpRequest) -> HttpResponse:
    """The service worker, with the release it installs; at the root, so that it may serve every page."""
    release = current_release()
    source = (folders().app / release.name / SERVICE_WORKER).read_text(encoding="utf-8")
    text = f"self.RELEASE = {json.dumps(asdict(release))};\n{source}"
    return HttpResponse(text, content_type="text/javascript; charset=utf-8")


@_root
def web_manifest(_request: HttpRequest) -> HttpResponse:
    """What the home screen shows."""
    return JsonResponse(manifest(), content_type="application/manifest+json")
