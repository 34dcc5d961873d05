"""The clinic by its API, in the name of somebody whose screens are not part of the journey."""

import uuid
from collections.abc import Callable
from http import HTTPStatus
from typing import Any

from playwright.sync_api import APIRequestContext

from tests.clinic.pen import Pen
from tests.journeys.people import CLINIC_ID, Person
from tests.journeys.site.server import Server

Raw = dict[str, Any]


def post_as(person: Person, server: Server, request: APIRequestContext, write: Callable[[Pen], list[Raw]]) -> list[Raw]:
    """Signs in on a device of its own, and pushes what is written there, in order."""
    pen, address, headers = _signed_in(person, server, request)
    written = write(pen)
    pushed = request.post(
        f"{address}/clinics/{CLINIC_ID}/push", data={"device": pen.device, "records": written}, headers=headers
    )
    assert {result["status"] for result in pushed.json()["results"]} == {"accepted"}, pushed.text()
    return written


def card_as(person: Person, server: Server, request: APIRequestContext, signature: str) -> bytes:
    """The page of a signed card, as the clinic draws it."""
    _, address, headers = _signed_in(person, server, request)
    card = request.get(f"{address}/clinics/{CLINIC_ID}/cards/{signature}.pdf", headers=headers)
    assert card.status == HTTPStatus.OK, card.text()
    return card.body()


def _signed_in(person: Person, server: Server, request: APIRequestContext) -> tuple[Pen, str, dict[str, str]]:
    """On a device of its own: who writes there, where to, and what every call needs."""
    pen = Pen(CLINIC_ID, person.username, person.full_name, str(uuid.uuid4()))
    address = f"{server.address}/api/v1"
    headers = {"X-Client": "1"}
    opened = request.get(f"{address}/session", headers=headers)
    headers["X-CSRFToken"] = opened.json()["csrf_token"]
    login = {"username": person.username, "password": person.password, "device": {"id": pen.device, "name": "Another"}}
    signed_in = request.post(f"{address}/session", data=login, headers=headers)
    assert signed_in.status == HTTPStatus.OK, signed_in.text()
    headers["X-CSRFToken"] = signed_in.json()["csrf_token"]
    return pen, address, headers
