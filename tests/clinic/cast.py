"""The people who appear in every test: four of one clinic, a stranger of another, and nobody at all."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

from django.conf import settings
from django.http import HttpResponse
from django.test import Client

from clinic.people.models import Clinic, User
from clinic.people.role import Role
from tests.clinic.factories import ClinicFactory, DeviceFactory, MembershipFactory, UserFactory
from tests.clinic.pen import Pen, Raw
from tests.clinic.sessions import signed_in


@dataclass(frozen=True)
class Person:
    """Somebody signed in on a device of their own, or (without a user) nobody."""

    clinic: Clinic
    client: Client
    device: str
    user: User | None = None

    @property
    def pen(self) -> Pen:
        """What this person writes records with."""
        assert self.user
        return Pen(str(self.clinic.pk), self.user.username, self.user.full_name, self.device)

    def push(self, *records: object, clinic: Clinic | None = None, **body: Any) -> HttpResponse:
        """Push records to the person's clinic, or to another one."""
        content = json.dumps({"device": self.device, "records": list(records), **body})
        address = f"/api/v1/clinics/{(clinic or self.clinic).pk}/push"
        return self.client.post(address, content, content_type="application/json")

    def results(self, *records: object) -> list[Raw]:
        """The results of a push that is answered with 200."""
        response = self.push(*records)
        assert response.status_code == 200, response.content
        return response.json()["results"]

    def accepted(self, *records: object) -> list[Raw]:
        """The results of a push of which everything is accepted."""
        results = self.results(*records)
        assert [result["status"] for result in results] == ["accepted"] * len(records), results
        return results

    def pull(self, after: str = "", *, clinic: Clinic | None = None, **query: Any) -> HttpResponse:
        """One page of the feed."""
        address = f"/api/v1/clinics/{(clinic or self.clinic).pk}/pull"
        return self.client.get(address, {"device": self.device, "after": after, **query})

    def page(self, after: str = "", **query: Any) -> Raw:
        """A page that is answered with 200."""
        response = self.pull(after, **query)
        assert response.status_code == 200, response.content
        return response.json()

    def everything(self, after: str = "", limit: int = 500) -> tuple[list[Raw], str]:
        """All records after the cursor, page by page, and the cursor reached."""
        records, more = [], True
        while more:
            page = self.page(after, limit=limit)
            assert not page["reset"]
            records += page["records"]
            after, more = page["cursor"], page["more"]
        return records, after


@dataclass(frozen=True)
class Cast:
    """Everybody."""

    surgeon: Person
    orthoptist: Person
    theatre_nurse: Person
    coordinator: Person
    stranger: Person
    anonymous: Person

    @property
    def clinic(self) -> Clinic:
        """The clinic that all but the stranger belong to."""
        return self.surgeon.clinic


def sign_in(user: User, device: str) -> Client:
    """A browser in which the person is signed in on the device."""
    client = Client()
    client.cookies[settings.SESSION_COOKIE_NAME] = signed_in(user, device)
    return client


def assemble() -> Cast:
    """The cast, in the database."""
    home, elsewhere = ClinicFactory(name="Harbour Eye Clinic"), ClinicFactory(name="Hill Eye Clinic")
    return Cast(
        surgeon=_person(home, Role.SURGEON, username="amara", full_name="Dr Amara Okonjo"),
        orthoptist=_person(home, Role.CLINIC, username="jonas", full_name="Jonas Lindqvist"),
        theatre_nurse=_person(home, Role.THEATRE, username="mei", full_name="Mei Tanaka"),
        coordinator=_person(home, Role.COORDINATOR, username="rosa", full_name="Rosa Quintero"),
        stranger=_person(elsewhere, Role.SURGEON, username="viktor", full_name="Dr Viktor Hale"),
        anonymous=Person(home, Client(), "7d3c0f3a-2b59-4a51-8b0a-0f9a3d1f5c11"),
    )


def _person(clinic: Clinic, role: Role, **account: str) -> Person:
    user = UserFactory(**account)
    MembershipFactory(user=user, clinic=clinic, role=role)
    device = DeviceFactory(user=user)
    return Person(clinic, sign_in(user, str(device.device_id)), str(device.device_id), user)
