"""Every call is asked from the OpenAPI description alone, and every answer is as it says: never a fault of the server.

Schemathesis makes calls that fit the description and calls that break it. They go through the whole site in the
hands of each role, of a member of another clinic and of nobody. Ids that the description cannot know (the clinic,
the device, a signature) are put in for most calls, so that they get beyond the first refusal.
"""

from __future__ import annotations

import pytest
from django.conf import settings as site
from django.db import transaction
from django.test import override_settings
from django.test.client import ClientHandler
from drf_spectacular.generators import SchemaGenerator
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from schemathesis import GenerationMode, checks, openapi
from schemathesis.specs.openapi import checks as by_description
from werkzeug.test import Client as Browser

from clinic.ledger.models import Record

CHECKS = [
    checks.not_a_server_error,
    by_description.status_code_conformance,
    by_description.content_type_conformance,
    by_description.response_schema_conformance,
]
PEOPLE = ("surgeon", "orthoptist", "theatre_nurse", "coordinator", "stranger", "anonymous")
TOKEN = "c" * 32
HEADERS = {"X-CSRFToken": TOKEN, "X-Client": "1", "Accept-Encoding": "identity"}
SLOW_TO_MAKE = {"POST /api/v1/clinics/{clinic}/push"}

HANDLER = ClientHandler(enforce_csrf_checks=True)


def door(environ, start_response):
    """The whole site, middleware and all, within the test's own transaction."""
    response = HANDLER(environ)
    start_response(f"{response.status_code} {response.reason_phrase}", list(response.items()))
    return [response.getvalue()]


def described():
    """The calls of the description, by name."""
    schema = openapi.from_dict(SchemaGenerator().get_schema(request=None, public=True))
    schema.app = door
    return {found.ok().label: found.ok() for found in schema.get_all_operations()}


CALLS = described()
OPEN_TO_BREAKING = [name for name, call in CALLS.items() if call.path_parameters or call.query or call.body]


@pytest.fixture
def signature(cast):
    """The id of a card's signature; passwords are not what is tried here, so they cost little."""
    line = cast.surgeon.pen.line()
    cast.surgeon.accepted(*line)
    with override_settings(PASSWORD_HASHERS=["django.contrib.auth.hashers.MD5PasswordHasher"]):
        yield line[-1]["id"]


def ask(cast, signature, call, person, *, known):
    """The call, by the person, answered and checked; nothing of it stays."""
    places = {"clinic": cast.clinic.pk, "device": person.device, "signature": signature}
    for given_places in (call.path_parameters, call.query):
        given_places.update({name: str(place) for name, place in places.items() if known and name in given_places})
    if known and isinstance(call.body, dict) and isinstance(call.body.get("device"), str):
        call.body = call.body | {"device": person.device}
    browser = Browser(door)
    browser.set_cookie(site.CSRF_COOKIE_NAME, TOKEN)
    if session := person.client.cookies.get(site.SESSION_COOKIE_NAME):
        browser.set_cookie(site.SESSION_COOKIE_NAME, session.value)
    with transaction.atomic():
        response = browser.open(**call.as_transport_kwargs(headers=HEADERS))
        transaction.set_rollback(True)
    call.validate_response(response, checks=CHECKS)
    return response


def some(name, mode):
    """For a function of a call, a person and whether the ids are known: calls of that name, always the same ones."""
    calls = CALLS[name].as_strategy(generation_mode=mode)
    bounds = settings(
        max_examples=6 if name in SLOW_TO_MAKE else 20,
        deadline=None,
        derandomize=True,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    return lambda asked: bounds(given(calls, st.sampled_from(PEOPLE), st.sampled_from((True, True, False)))(asked))


@pytest.mark.parametrize("name", CALLS)
def test_a_call_as_described_is_answered_as_described(cast, signature, name):
    statuses = set()

    @some(name, GenerationMode.POSITIVE)
    def asked(call, who, known):
        statuses.add(ask(cast, signature, call, getattr(cast, who), known=known).status_code)

    asked()

    assert statuses - {401, 404}, "nothing got beyond the door"


@pytest.mark.parametrize("name", OPEN_TO_BREAKING)
def test_a_call_that_breaks_the_description_is_answered_as_described(cast, signature, name):
    @some(name, GenerationMode.NEGATIVE)
    def asked(call, who, known):
        ask(cast, signature, call, getattr(cast, who), known=known)

    before = Record.objects.count()
    asked()

    assert Record.objects.count() == before
