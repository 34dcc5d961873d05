"""The optional second factor: a code of six digits that an authenticator app shows (TOTP, RFC 6238).

An account that has one enrolled needs it to sign in; an administrator needs it for the administration pages anyway.
"""

from __future__ import annotations

from django_otp import match_token
from django_otp.models import Device
from django_otp.plugins.otp_totp.models import TOTPDevice

from clinic.people.models import User


def needed(user: User) -> bool:
    """Whether the account has a second factor enrolled."""
    return bool(TOTPDevice.objects.devices_for_user(user, confirmed=True).exists())


def matching(user: User, code: str) -> Device | None:
    """The enrolled authenticator that shows this code now; a code is good once."""
    found: Device | None = match_token(user, code)
    return found
