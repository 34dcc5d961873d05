"""Accounts, and the role that each has in a clinic."""

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError, connection, transaction
from django.db.models import ProtectedError

from clinic.people.models import Membership, User
from clinic.people.role import Role
from tests.clinic.factories import PASSWORD, ClinicFactory, MembershipFactory, UserFactory


def test_a_new_account_has_a_name_and_a_hashed_password(db):
    user = User.objects.create_user("ilse", full_name="Ilse Brandt", password=PASSWORD)

    assert user.check_password(PASSWORD)
    assert user.get_full_name() == "Ilse Brandt"
    assert (user.is_staff, user.is_superuser, user.is_active) == (False, False, True)


def test_an_account_without_a_password_cannot_sign_in(db):
    assert not User.objects.create_user("ilse", full_name="Ilse Brandt").has_usable_password()


@pytest.mark.parametrize("username", ["", "two words", "a" * 61])
def test_a_name_that_records_could_not_carry_is_refused(db, username):
    with pytest.raises((ValidationError, ValueError)):
        User.objects.create_user(username, full_name="Somebody")


def test_two_accounts_cannot_have_one_name(db):
    UserFactory(username="ilse")
    with pytest.raises(ValidationError):
        User.objects.create_user("ilse", full_name="Somebody Else")


def test_an_administrator_belongs_to_no_clinic_by_that_alone(db):
    administrator = User.objects.create_superuser("root", full_name="Root", password=PASSWORD)

    assert administrator.is_staff
    assert not administrator.memberships.exists()


def test_a_person_has_one_role_in_a_clinic_and_perhaps_another_elsewhere(db):
    surgeon = MembershipFactory()
    MembershipFactory(user=surgeon.user, clinic=ClinicFactory(), theatre_nurse=True)
    with pytest.raises(IntegrityError), transaction.atomic():
        MembershipFactory(user=surgeon.user, clinic=surgeon.clinic, coordinator=True)

    assert set(surgeon.user.memberships.values_list("role", flat=True)) == {Role.SURGEON, Role.THEATRE}


def test_the_database_knows_no_other_roles(db):
    with pytest.raises(IntegrityError), transaction.atomic():
        Membership.objects.create(user=UserFactory(), clinic=ClinicFactory(), role="visitor")


def test_an_account_that_wrote_records_is_neither_deleted_nor_renamed(cast):
    cast.surgeon.accepted(cast.surgeon.pen.patient())
    with pytest.raises(ProtectedError):
        cast.surgeon.user.delete()
    with pytest.raises(IntegrityError):
        rename(cast.surgeon.user)


def rename(user):
    with transaction.atomic():
        User.objects.filter(pk=user.pk).update(username="somebody")
        connection.check_constraints()
