"""Who is asking: the person's role in the clinic of the address, and the device that is named."""

from __future__ import annotations

from uuid import UUID

from django.utils import timezone
from rest_framework.exceptions import NotAuthenticated
from rest_framework.request import Request

from clinic.api.refusals import ClinicUnknown, DeviceUnknown, Refusal
from clinic.devices.models import Device
from clinic.devices.register import held, seen
from clinic.errors.shape import Error
from clinic.people.models import Membership, User
from clinic.people.role import Role


def person(request: Request) -> User:
    """The account; the views that ask are closed to strangers."""
    if not isinstance(request.user, User):
        raise NotAuthenticated
    return request.user


def role_in(clinic: UUID, request: Request) -> Role:
    """The person's role there; to others the clinic does not exist."""
    membership = Membership.objects.filter(clinic=clinic, user=person(request)).first()
    if membership is None:
        raise ClinicUnknown
    return Role(membership.role)


def device_of(request: Request, told: object) -> Device:
    """The person's device that the request names; the visit is noted."""
    try:
        device_id = UUID(told) if isinstance(told, str) else None
    except ValueError:
        device_id = None
    if device_id is None:
        text = "The request must name the device."
        raise Refusal(400, Error(code="device_missing", text=text, field="device", allowed="the device's UUID"))
    device = held(person(request), device_id)
    if device is None:
        raise DeviceUnknown
    seen(device, now=timezone.now())
    return device
