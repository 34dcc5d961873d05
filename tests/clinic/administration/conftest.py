"""An administrator with an authenticator app, signed in with both factors."""

import pytest
from django.test import Client
from django_otp import DEVICE_ID_SESSION_KEY
from django_otp.plugins.otp_totp.models import TOTPDevice

from tests.clinic.factories import UserFactory


@pytest.fixture
def authenticator(db):
    user = UserFactory(administrator=True, username="root")
    return TOTPDevice.objects.create(user=user, name="authenticator")


@pytest.fixture
def administrator(authenticator):
    client = Client()
    client.force_login(authenticator.user)
    session = client.session
    session[DEVICE_ID_SESSION_KEY] = authenticator.persistent_id
    session.save()
    return client
