"""Who is asking: the person's role in the clinic of the address, and the device that is named."""

from __future__ import annotations

from uuid import UUID

from django.utils import timezone
from rest_framework.exceptions import NotAuthenticated
from rest_framework.request import Request

from clinic.api.refusals import ClinicUnknown, DeviceClosed, DeviceRevoked, DeviceUnknown, Refusal
from clinic.devices.leaving import counts
from clinic.devices.models import Device
from clinic.devices.register import SESSION_DEVICE, held, is_closed, seen
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
    found = Membership.objects.filter(clinic=clinic, user=person(request)).first()
    if found is None or not counts(found, session_device(request) if found.ended_at else None):
        raise ClinicUnknown
    return Role(found.role)


def device_of(request: Request, told: object) -> Device:
    """The person's device that the request names, which must be the session's own; the visit is noted."""
    try:
        device_id = UUID(told) if isinstance(told, str) else None
    except ValueError:
        device_id = None
    if device_id is None:
        text = "The request must name the device."
        raise Refusal(400, Error(code="device_missing", text=text, field="device", allowed="the device's UUID"))
    if str(device_id) != request.session.get(SESSION_DEVICE):
        raise DeviceUnknown
    return _open_device(request)


def trusted_device(request: Request) -> Device:
    """The device that the session was opened on, unless it was revoked: for calls that hand something out."""
    device = _open_device(request)
    require_trusted(device)
    return device


def require_trusted(device: Device) -> None:
    """DeviceRevoked if it was."""
    if device.revoked_at:
        raise DeviceRevoked


def session_device(request: Request) -> Device | None:
    """The person's device that the session was opened on."""
    told = request.session.get(SESSION_DEVICE)
    return held(person(request), UUID(told)) if told else None


def _open_device(request: Request) -> Device:
    device = session_device(request)
    if device is None:
        raise DeviceUnknown
    now = timezone.now()
    if is_closed(device, now=now):
        raise DeviceClosed
    seen(device, now=now)
    return device
