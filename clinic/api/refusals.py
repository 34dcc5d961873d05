"""The API's own refusals: HTTP status and :class:`clinic.errors.shape.Error` in one exception."""

from __future__ import annotations

import math
from datetime import timedelta

from django.utils.translation import gettext

from clinic.errors.shape import Error


class Refusal(Exception):
    """Answered by :mod:`clinic.api.error_handler` with ``status`` and ``errors``."""

    def __init__(self, status: int, *errors: Error) -> None:
        super().__init__(status, *errors)
        self.status = status
        self.errors = errors
        self.headers: dict[str, str] = {}


class ClinicUnknown(Refusal):
    """The clinic does not exist for this account; whether it exists for another is not told."""

    def __init__(self) -> None:
        super().__init__(404, Error(code="clinic_unknown", text="This account belongs to no such clinic."))


class LockedOut(Refusal):
    """Too many tries to sign in; the same for a name that no account has."""

    def __init__(self, wait: timedelta) -> None:
        minutes = max(1, math.ceil(wait / timedelta(minutes=1)))
        text = gettext("Too many tries. Wait {minutes} min, then try again, or ask your administrator.")
        super().__init__(429, Error(code="locked_out", text=text.format(minutes=minutes)))
        self.headers = {"Retry-After": str(math.ceil(wait.total_seconds()))}


class DeviceUnknown(Refusal):
    """The account never signed in from this device."""

    def __init__(self) -> None:
        super().__init__(
            403, Error(code="device_unknown", text="This device is not registered. Sign in on it once.", field="device")
        )


class DeviceRevoked(Refusal):
    """The device gets no more records; what it holds it may still send."""

    def __init__(self) -> None:
        super().__init__(403, Error(code="device_revoked", text="This device was revoked.", field="device"))


class DeviceClosed(Refusal):
    """The revoked device has sent its last, or had its time: it wipes what is left."""

    def __init__(self) -> None:
        text = "This device was revoked, and nothing more is taken from it."
        super().__init__(403, Error(code="device_closed", text=text, field="device"))


class Unavailable(Refusal):
    """The database does not answer."""

    def __init__(self) -> None:
        super().__init__(503, Error(code="unavailable", text="The server cannot reach its database. Try again later."))
