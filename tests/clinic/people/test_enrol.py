"""The command that gives people accounts and roles makes what it is told, and guesses nothing."""

import io

import pytest
from django.core.management import call_command
from django.core.management.base import CommandError

from clinic.people.models import Clinic, Membership, User
from tests.clinic.factories import PASSWORD, ClinicFactory, MembershipFactory


@pytest.fixture(autouse=True)
def typed(monkeypatch):
    """What somebody types when asked for a password."""
    monkeypatch.setattr("getpass.getpass", lambda _prompt: PASSWORD)


def enrol(username, **options):
    call_command("enrol", username, verbosity=0, stdout=io.StringIO(), **options)


def test_a_new_clinic_gets_its_first_person(db):
    enrol("ilse", full_name="Ilse Brandt", clinic="Harbour", new_clinic=True, role="surgeon")

    membership = Membership.objects.get()
    assert (membership.user.username, membership.clinic.name, membership.role) == ("ilse", "Harbour", "surgeon")
    assert membership.user.check_password(PASSWORD)


def test_a_person_who_is_there_keeps_account_and_password_and_gets_the_new_role(db):
    surgeon = MembershipFactory()
    enrol(surgeon.user.username, clinic=surgeon.clinic.name, role="coordinator")

    assert Membership.objects.get().role == "coordinator"
    assert User.objects.count() == 1


@pytest.mark.parametrize(
    ("options", "told"),
    [
        ({"clinic": "Harbor"}, "known are: Harbour"),
        ({"clinic": "Harbour", "new_clinic": True}, "already"),
        ({"clinic": "Harbour", "full_name": None}, "--full-name"),
    ],
)
def test_what_does_not_fit_is_refused_and_nothing_is_made(db, options, told):
    ClinicFactory(name="Harbour")
    with pytest.raises(CommandError, match=told):
        enrol("ilse", **{"full_name": "Ilse Brandt", "role": "surgeon"} | options)

    assert (Clinic.objects.count(), User.objects.count(), Membership.objects.count()) == (1, 0, 0)


def test_a_weak_password_is_refused(db, monkeypatch):
    monkeypatch.setattr("getpass.getpass", lambda _prompt: "password")
    with pytest.raises(CommandError, match="too common"):
        enrol("ilse", full_name="Ilse Brandt", clinic="Harbour", new_clinic=True, role="surgeon")

    assert Clinic.objects.count() == 0


def test_an_account_is_not_renamed_by_the_way(db):
    surgeon = MembershipFactory()
    with pytest.raises(CommandError, match=surgeon.user.full_name):
        enrol(surgeon.user.username, full_name="Somebody Else", clinic=surgeon.clinic.name, role="surgeon")
