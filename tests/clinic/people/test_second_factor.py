"""Enrolling an authenticator app, and taking it away."""

import builtins

import pytest
from django.core.management import CommandError, call_command
from django_otp.oath import TOTP
from django_otp.plugins.otp_totp.models import TOTPDevice

from clinic.people import second_factor
from tests.clinic.factories import UserFactory


@pytest.fixture
def user(db):
    return UserFactory(username="amara")


def show(monkeypatch, code):
    monkeypatch.setattr(builtins, "input", lambda _prompt: code())


def right_code():
    return f"{TOTP(TOTPDevice.objects.get().bin_key).token():06}"


def test_an_authenticator_counts_once_it_has_shown_a_right_code(user, monkeypatch, capsys):
    show(monkeypatch, right_code)
    call_command("second_factor", "amara")

    assert "otpauth://totp/" in capsys.readouterr().out
    assert second_factor.needed(user)


def test_a_wrong_code_leaves_the_account_as_it_was(user, monkeypatch):
    show(monkeypatch, lambda: "no code")

    with pytest.raises(CommandError, match="Nothing was changed"):
        call_command("second_factor", "amara")
    assert not second_factor.needed(user)


def test_a_lost_authenticator_is_taken_away(user, monkeypatch):
    show(monkeypatch, right_code)
    call_command("second_factor", "amara")
    call_command("second_factor", "amara", "--remove")

    assert not second_factor.needed(user)


def test_a_second_authenticator_is_not_slipped_in(user, monkeypatch):
    show(monkeypatch, right_code)
    call_command("second_factor", "amara")

    with pytest.raises(CommandError, match="already"):
        call_command("second_factor", "amara")


def test_a_name_that_is_not_there_is_told(db):
    with pytest.raises(CommandError, match="no account"):
        call_command("second_factor", "nobody")
