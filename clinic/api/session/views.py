"""Signing in and out."""

from __future__ import annotations

from django.conf import settings
from django.contrib.auth import authenticate, login, logout
from django.db import transaction
from django.middleware.csrf import get_token
from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.permissions import AllowAny
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from clinic.api.membership import SESSION_DEVICE
from clinic.api.refusals import DeviceClosed, Refusal
from clinic.api.session.serializers import SessionSerializer, SignInSerializer
from clinic.api.session.throttle import TriesPerAccount, TriesPerAddress
from clinic.devices.register import is_closed, register
from clinic.errors.shape import Error


class SessionView(APIView):
    """The session of whoever asks."""

    permission_classes = (AllowAny,)
    throttle_classes = (TriesPerAccount, TriesPerAddress)

    @extend_schema(operation_id="session_read", responses=SessionSerializer)
    def get(self, request: Request) -> Response:
        """Who is signed in, and the token for writes."""
        return Response(_session(request))

    @extend_schema(operation_id="sign_in", request=SignInSerializer, responses=SessionSerializer)
    def post(self, request: Request) -> Response:
        """Sign in; the device is made known to the clinic's people."""
        given = SignInSerializer(data=request.data)
        given.is_valid(raise_exception=True)
        device = given.validated_data["device"]
        user = authenticate(
            request, username=given.validated_data["username"], password=given.validated_data["password"]
        )
        if user is None:
            raise Refusal(401, Error(code="sign_in_failed", text="The account name and the password do not fit."))
        now = timezone.now()
        with transaction.atomic():
            if is_closed(register(user, device["id"], device["name"], now=now), now=now):
                raise DeviceClosed
        login(request._request, user)  # noqa: SLF001 - Django's own request carries the session
        request.session[SESSION_DEVICE] = str(device["id"])
        request.user = user
        return Response(_session(request))

    @extend_schema(operation_id="sign_out", request=None, responses=SessionSerializer)
    def delete(self, request: Request) -> Response:
        """Sign out; what the device holds stays on it."""
        logout(request._request)  # noqa: SLF001
        request.user = request._request.user  # noqa: SLF001
        return Response(_session(request))


def _session(request: Request) -> dict[str, object]:
    user = request.user
    memberships = user.memberships.select_related("clinic").order_by("clinic__name", "clinic_id") if user.pk else ()
    return {
        "csrf_token": get_token(request._request),  # noqa: SLF001
        "server_time": timezone.now().isoformat(),
        "minimum_client": settings.MINIMUM_CLIENT,
        "user": {"username": user.username, "full_name": user.full_name} if user.pk else None,
        "clinics": [
            {"id": str(membership.clinic_id), "name": membership.clinic.name, "role": membership.role}
            for membership in memberships
        ],
    }
