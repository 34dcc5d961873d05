"""A session as a sign-in on a device leaves it, without what a sign-in costs."""

from __future__ import annotations

from django.conf import settings
from django.contrib.auth import BACKEND_SESSION_KEY, HASH_SESSION_KEY, SESSION_KEY
from django.contrib.sessions.backends.db import SessionStore

from clinic.devices.register import SESSION_DEVICE
from clinic.people.models import User


def signed_in(user: User, device: str) -> str:
    """Its key."""
    session = SessionStore()
    session[SESSION_KEY] = str(user.pk)
    session[BACKEND_SESSION_KEY] = settings.AUTHENTICATION_BACKENDS[0]
    session[HASH_SESSION_KEY] = user.get_session_auth_hash()
    session[SESSION_DEVICE] = device
    session.create()
    return str(session.session_key)
