"""Signing in and out."""

from __future__ import annotations

from uuid import UUID

import django_otp
from django.conf import settings
from django.contrib.auth import authenticate, login, logout
from django.db import transaction
from django.middleware.csrf import get_token
from django.utils import timezone
from django.utils.translation import gettext
from django_otp.models import Device as FactorDevice
from drf_spectacular.utils import extend_schema
from rest_framework.permissions import AllowAny
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.membership import session_device
from clinic.api.refusals import DeviceClosed, LockedOut, Refusal
from clinic.api.session.serializers import SessionSerializer, SignInSerializer
from clinic.api.session.throttle import TriesPerAddress
from clinic.audit.facts import facts_of
from clinic.devices.leaving import counts
from clinic.devices.models import Device
from clinic.devices.register import SESSION_DEVICE, SIGNED_IN_AT, is_closed, register
from clinic.errors.shape import Error
from clinic.people import card_keys, lockout, second_factor
from clinic.people.models import User


class SessionView(APIView):
    """The session of whoever asks."""

    permission_classes = (AllowAny,)
    throttle_classes = (TriesPerAddress,)

    @extend_schema(operation_id="session_read", responses=SessionSerializer)
    def get(self, request: Request) -> Response:
        """Who is signed in, and the token for writes."""
        return Response(_session(request))

    @extend_schema(operation_id="sign_in", request=SignInSerializer, responses=SessionSerializer)
    def post(self, request: Request) -> Response:
        """Sign in; the device is made known to the clinic's people."""
        given = SignInSerializer(data=request.data)
        given.is_valid(raise_exception=True)
        told = given.validated_data
        now = timezone.now()
        tries = _tries_of(told["username"], told["device"]["id"])
        if wait := lockout.begin(tries, now=now):
            _note_who_was_tried(request, told["username"])
            raise LockedOut(wait)
        user = authenticate(request, username=told["username"], password=told["password"])
        if not isinstance(user, User):
            _note_who_was_tried(request, told["username"])
            text = gettext("The account name and the password do not fit.")
            raise Refusal(401, Error(code="sign_in_failed", text=text))
        facts_of(request).who = user.username
        factor = _second_factor(user, told.get("code", "").strip())
        lockout.succeeded(tries)
        with transaction.atomic():
            if is_closed(register(user, told["device"]["id"], told["device"]["name"], now=now), now=now):
                raise DeviceClosed
        login(request._request, user)  # noqa: SLF001 - Django's own request carries the session
        if factor:
            django_otp.login(request._request, factor)  # noqa: SLF001
        request.session[SESSION_DEVICE] = str(told["device"]["id"])
        request.session[SIGNED_IN_AT] = now.isoformat()
        request.user = user
        return Response(_session(request))

    @extend_schema(operation_id="sign_out", request=None, responses={200: SessionSerializer})
    def delete(self, request: Request) -> Response:
        """Sign out; what the device holds stays on it."""
        logout(request._request)  # noqa: SLF001
        request.user = request._request.user  # noqa: SLF001
        return Response(_session(request))


def _tries_of(username: str, device: UUID) -> str:
    known = Device.objects.filter(user__username=username, device_id=device, revoked_at=None).exists()
    return lockout.name_of(username, device if known else None)


def _note_who_was_tried(request: Request, username: str) -> None:
    """Only if it is an account: people type passwords where names belong."""
    if User.objects.filter(username=username).exists():
        facts_of(request).who = username


def _second_factor(user: User, code: str) -> FactorDevice | None:
    """What the code was checked with; None for an account without a second factor."""
    if not second_factor.needed(user):
        return None
    if not code:
        text = gettext("This account needs the code of its authenticator app, too.")
        raise Refusal(401, Error(code="second_factor_required", text=text, field="code", allowed="6 digits"))
    factor = second_factor.matching(user, code)
    if factor is None:
        text = gettext("That is not the code of this moment. Wait for the next one and try again.")
        raise Refusal(401, Error(code="second_factor_failed", text=text, field="code", allowed="6 digits"))
    return factor


def _session(request: Request) -> dict[str, object]:
    user = request.user
    device = session_device(request) if user.pk else None
    roles = user.memberships.select_related("clinic").order_by("clinic__name", "clinic_id") if user.pk else ()
    trusted = not (device and device.revoked_at)
    return {
        "csrf_token": get_token(request._request),  # noqa: SLF001
        "server_time": timezone.now().isoformat(),
        "minimum_client": settings.MINIMUM_CLIENT,
        "user": {"username": user.username, "full_name": user.full_name} if user.pk else None,
        "clinics": [
            {
                "id": str(role.clinic_id),
                "name": role.clinic.name,
                "role": role.role,
                "card_keys": card_keys.card_keys(role.clinic_id) if trusted else [],
            }
            for role in roles
            if counts(role, device)
        ],
    }
