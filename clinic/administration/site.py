"""The door: an administrator's password and second factor, with the same lock-out as everywhere."""

from __future__ import annotations

from typing import Any

from django.contrib.auth.models import AnonymousUser
from django.core.exceptions import ValidationError
from django.http import HttpRequest
from django.utils import timezone
from django_otp.admin import OTPAdminAuthenticationForm, OTPAdminSite

from clinic.people import lockout, second_factor
from clinic.people.models import User


class SignInForm(OTPAdminAuthenticationForm):  # type: ignore[misc] # django-otp has no types
    """Password and code; a try is counted before either is looked at."""

    def clean(self) -> dict[str, Any]:
        """The form's data, or the reason why not."""
        name = lockout.name_of(self.cleaned_data.get("username") or "")
        if lockout.begin(name, now=timezone.now()):
            raise ValidationError("Too many tries. Wait a while, then try again.", code="locked_out")
        cleaned: dict[str, Any] = super().clean()
        lockout.succeeded(name)
        return cleaned

    def clean_otp(self, user: User | None) -> None:
        """The code, as signing in to the app takes it; without one of this moment nobody comes in."""
        if user is None:
            return
        factor = second_factor.matching(user, self.cleaned_data.get("otp_token") or "")
        if factor is None:
            raise ValidationError("The code of the authenticator app is missing or wrong.", code="second_factor")
        user.otp_device = factor  # type: ignore[attr-defined] # where django-otp looks when the session begins


class AdministrationSite(OTPAdminSite):  # type: ignore[misc] # the same
    """For administrators alone; other staff do not exist."""

    site_header = site_title = "Primary Position: administration"
    index_title = "Accounts, devices and the audit trail"
    login_form = SignInForm
    site_url = None

    def has_permission(self, request: HttpRequest) -> bool:
        """An active administrator who has shown the second factor in this session."""
        user: User | AnonymousUser = request.user
        return bool(user.is_active and user.is_superuser and super().has_permission(request))


administration = AdministrationSite(name="administration")
