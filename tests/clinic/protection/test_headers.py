"""The headers that keep the app to itself."""

import pytest
from django.http import HttpResponse
from django.test import RequestFactory

from clinic.protection.headers import SecurityHeaders
from tests.clinic.factories import PASSWORD

ADDRESSES = ["/health", "/api/v1/session", "/api/v1/schema", "/nothing"]


def directives(policy):
    return {name: values for name, *values in (part.split() for part in policy.split("; "))}


def policy_of(path):
    request = RequestFactory().get(path)
    response = SecurityHeaders(lambda _request: HttpResponse())(request)
    return directives(response.headers["Content-Security-Policy"])


@pytest.mark.parametrize("address", ADDRESSES)
def test_every_answer_has_the_strict_policy_and_the_other_headers(client, db, address):
    headers = client.get(address).headers
    policy = directives(headers["Content-Security-Policy"])

    assert policy["default-src"] == ["'none'"]
    assert policy["script-src"] == ["'self'"]
    assert policy["frame-ancestors"] == ["'none'"]
    assert "unsafe" not in headers["Content-Security-Policy"]
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["X-Frame-Options"] == "DENY"
    assert headers["Referrer-Policy"] == "same-origin"
    assert headers["Cross-Origin-Opener-Policy"] == "same-origin"
    assert headers["Cross-Origin-Resource-Policy"] == "same-origin"
    assert "microphone=()" in headers["Permissions-Policy"]
    assert "camera=(self)" in headers["Permissions-Policy"]


def test_only_the_engines_worker_may_compile_webassembly():
    assert policy_of("/static/app/1a2b3c/engine/worker.js")["script-src"] == ["'self'", "'wasm-unsafe-eval'"]


@pytest.mark.parametrize(
    "path",
    [
        "/",
        "/sw.js",
        "/static/app/1a2b3c/engine/engine.js",
        "/static/app/1a2b3c/main.js",
        "/static/app/1a2b3c/deeper/engine/worker.js",
        "/static/app/engine/worker.js/",
        "/elsewhere/static/app/1a2b3c/engine/worker.js",
        "/api/v1/static/app/x/engine/worker.js",
    ],
)
def test_nothing_else_may(path):
    assert policy_of(path)["script-src"] == ["'self'"]


def test_even_the_worker_gets_no_inline_script_and_no_evaluation_of_javascript():
    policy = policy_of("/static/app/1a2b3c/engine/worker.js")

    assert "'unsafe-inline'" not in policy["script-src"]
    assert "'unsafe-eval'" not in policy["script-src"]


@pytest.mark.parametrize("address", ["/api/v1/session", "/api/v1/schema"])
def test_no_answer_of_the_api_is_cached(client, db, address):
    assert client.get(address).headers["Cache-Control"] == "no-store"


def test_a_header_that_a_view_has_set_stays():
    response = HttpResponse(headers={"Cache-Control": "max-age=60", "Content-Security-Policy": "sandbox"})
    answered = SecurityHeaders(lambda _request: response)(RequestFactory().get("/api/v1/x"))

    assert answered.headers["Cache-Control"] == "max-age=60"
    assert answered.headers["Content-Security-Policy"] == "sandbox"


def test_the_cookies_are_closed_to_scripts_and_to_other_sites(client, cast):
    device = {"id": cast.surgeon.device, "name": "Phone"}
    body = {"username": "amara", "password": PASSWORD, "device": device}
    client.post("/api/v1/session", body, content_type="application/json")

    for name in ("sessionid", "csrftoken"):
        assert (client.cookies[name]["httponly"], client.cookies[name]["samesite"]) == (True, "Strict")
