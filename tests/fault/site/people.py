"""A clinic of its own for every run, its people, and their devices, each signed in already."""

from __future__ import annotations

import itertools
import uuid
from typing import Any

from django.contrib.auth.hashers import make_password
from django.db import transaction
from django.utils import timezone

from clinic.devices import register
from clinic.devices.models import Device
from clinic.people.models import Clinic, Membership, User
from tests.clinic.pen import Pen, Raw
from tests.clinic.sessions import signed_in

PASSWORD = "quiet harbour 41"  # noqa: S105 - of invented accounts
_HASHED = make_password(PASSWORD)
_number = itertools.count(1)


@transaction.atomic
def clinic(people: list[dict[str, Any]]) -> dict[str, Any]:
    """A new clinic with ``people`` of ``role``, each with so many ``devices``."""
    made = Clinic.objects.create(name=f"Clinic {next(_number)}")
    return {"clinic": str(made.pk), "people": [_person(made, **person) for person in people]}


def revoke(device: str) -> None:
    """By the site's own way."""
    register.revoke(Device.objects.get(device_id=device), now=timezone.now())


def specimen(login: dict[str, Any]) -> Raw:
    """Some record of the person's."""
    return Pen(login["clinic"], login["username"], login["full_name"], login["devices"][0]["id"]).patient()


def _person(clinic: Clinic, *, role: str, devices: int) -> dict[str, Any]:
    number = next(_number)
    user = User.objects.create(username=f"{role}{number}", full_name=f"Person Number {number}", password=_HASHED)
    Membership.objects.create(user=user, clinic=clinic, role=role)
    return {
        "clinic": str(clinic.pk),
        "username": user.username,
        "full_name": user.full_name,
        "password": PASSWORD,
        "role": role,
        "devices": [_device(user) for _ in range(devices)],
    }


def _device(user: User) -> dict[str, str]:
    now = timezone.now()
    device = Device.objects.create(user=user, device_id=uuid.uuid4(), name="Phone", registered_at=now, last_seen_at=now)
    return {"id": str(device.device_id), "session": signed_in(user, str(device.device_id))}
