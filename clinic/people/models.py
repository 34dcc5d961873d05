"""User, Clinic, CardKey, Membership and SignInTries."""

from __future__ import annotations

import uuid
from typing import Any, ClassVar

from django.contrib.auth.models import AbstractBaseUser, BaseUserManager, PermissionsMixin
from django.contrib.auth.validators import UnicodeUsernameValidator
from django.db import models

from clinic.people.role import Role


class UserManager(BaseUserManager["User"]):
    """Makes accounts; the names it takes are the ones ``createsuperuser`` uses."""

    def create_user(self, username: str, *, password: str | None = None, **fields: Any) -> User:  # noqa: ANN401
        """A new account; without a password nobody can sign in to it."""
        user = self.model(username=self.model.normalize_username(username), **fields)
        user.set_password(password)
        user.full_clean(exclude=["password"])
        user.save(using=self._db)
        return user

    def create_superuser(self, username: str, *, password: str | None = None, **fields: Any) -> User:  # noqa: ANN401
        """An administrator: may manage accounts, and belongs to no clinic by that alone."""
        return self.create_user(username, password=password, is_staff=True, is_superuser=True, **fields)


class User(AbstractBaseUser, PermissionsMixin):
    """A person who signs in. ``username`` is what records carry as their author."""

    username = models.CharField(max_length=60, unique=True, validators=[UnicodeUsernameValidator()])
    full_name = models.CharField(max_length=120)
    is_active = models.BooleanField(
        default=True,
        help_text="Switched off, the account is answered nothing, so its phones keep what they hold. "
        "Let the person go first: see the actions of the list.",
    )
    is_staff = models.BooleanField(default=False)
    joined_at = models.DateTimeField(auto_now_add=True)

    objects = UserManager()

    USERNAME_FIELD = "username"
    REQUIRED_FIELDS: ClassVar[list[str]] = ["full_name"]

    def __str__(self) -> str:
        return self.username

    def get_full_name(self) -> str:
        """The name that signatures carry."""
        return self.full_name


class Clinic(models.Model):
    """A clinic or an outreach programme: the owner of one feed of records."""

    id = models.UUIDField(primary_key=True, default=uuid.uuid4, editable=False)
    name = models.CharField(max_length=120)
    members = models.ManyToManyField(User, through="Membership", related_name="clinics")

    def __str__(self) -> str:
        return self.name


class CardKey(models.Model):
    """What a clinic's card codes are sealed with; see :mod:`clinic.people.card_keys`."""

    clinic = models.ForeignKey(Clinic, on_delete=models.PROTECT, related_name="card_keys")
    secret = models.CharField(max_length=64, unique=True)
    made_at = models.DateTimeField()

    class Meta:
        ordering: ClassVar = ["-made_at", "-id"]

    def __str__(self) -> str:
        return f"key of {self.clinic_id}, made {self.made_at:%Y-%m-%d}"


class Membership(models.Model):
    """A person's role in a clinic; what an ended one is still good for: :mod:`clinic.devices.leaving`."""

    user = models.ForeignKey(User, on_delete=models.PROTECT, related_name="memberships")
    clinic = models.ForeignKey(Clinic, on_delete=models.PROTECT, related_name="memberships")
    role = models.CharField(max_length=20, choices=Role.choices)
    ended_at = models.DateTimeField(null=True, blank=True)

    class Meta:
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["user", "clinic"], name="one_role_per_person_and_clinic"),
            models.CheckConstraint(condition=models.Q(role__in=Role.values), name="role_is_known"),
        ]

    def __str__(self) -> str:
        return f"{self.user_id} is {self.role} in {self.clinic_id}"


class SignInTries(models.Model):
    """Tries to sign in that were not right so far; see :mod:`clinic.people.lockout`."""

    name = models.CharField(max_length=64, primary_key=True)
    count = models.PositiveIntegerField()
    last_at = models.DateTimeField()
    shut_until = models.DateTimeField()

    def __str__(self) -> str:
        return f"{self.count} tries"
