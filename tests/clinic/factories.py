"""Invented accounts, clinics and devices."""

from __future__ import annotations

import uuid
from datetime import UTC, datetime
from typing import Any

import factory
from django.contrib.auth.hashers import make_password
from factory.django import DjangoModelFactory

from clinic.devices.models import Device
from clinic.people.models import Clinic, Membership, User
from clinic.people.role import Role

PASSWORD = "quiet harbour 41"  # noqa: S105 - of invented accounts
_HASHED = make_password(PASSWORD)


class UserFactory(DjangoModelFactory[User]):
    """An account whose password is ``PASSWORD``."""

    class Meta:
        model = User

    class Params:
        administrator = factory.Trait(is_staff=True, is_superuser=True)
        switched_off = factory.Trait(is_active=False)

    username: Any = factory.Sequence(lambda number: f"person{number}")
    full_name: Any = factory.Sequence(lambda number: f"Person Number {number}")
    password = _HASHED


class ClinicFactory(DjangoModelFactory[Clinic]):
    """A clinic with nobody in it."""

    class Meta:
        model = Clinic

    name: Any = factory.Sequence(lambda number: f"Clinic {number}")


class MembershipFactory(DjangoModelFactory[Membership]):
    """A surgeon in a clinic, unless a trait says otherwise."""

    class Meta:
        model = Membership

    class Params:
        orthoptist = factory.Trait(role=Role.CLINIC)
        theatre_nurse = factory.Trait(role=Role.THEATRE)
        coordinator = factory.Trait(role=Role.COORDINATOR)

    user: Any = factory.SubFactory(UserFactory)
    clinic: Any = factory.SubFactory(ClinicFactory)
    role = Role.SURGEON


class DeviceFactory(DjangoModelFactory[Device]):
    """A phone in somebody's hands."""

    class Meta:
        model = Device

    class Params:
        revoked = factory.Trait(revoked_at=datetime(2026, 11, 20, tzinfo=UTC))

    device_id: Any = factory.LazyFunction(uuid.uuid4)
    user: Any = factory.SubFactory(UserFactory)
    name: Any = factory.Sequence(lambda number: f"Phone {number}")
    registered_at = datetime(2026, 11, 1, tzinfo=UTC)
    last_seen_at = datetime(2026, 11, 1, tzinfo=UTC)
