"""``manage.py enrol``: give a person an account and a role in a clinic."""

from __future__ import annotations

import getpass
from argparse import ArgumentParser
from typing import Any

from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand, CommandError
from django.db import transaction

from clinic.people.models import Clinic, Membership, User
from clinic.people.role import Role


class Command(BaseCommand):
    """Makes what is missing: the account (asking for its password), the clinic with ``--new-clinic``, the role."""

    help = "Give a person an account and a role in a clinic."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Who, where, and as what."""
        parser.add_argument("username")
        parser.add_argument("--full-name", help="Needed for a new account: the name that signatures carry.")
        parser.add_argument("--clinic", required=True, help="The clinic's name.")
        parser.add_argument("--new-clinic", action="store_true", help="Make the clinic.")
        parser.add_argument("--role", required=True, choices=Role.values)

    @transaction.atomic
    def handle(self, *_: Any, **options: Any) -> None:  # noqa: ANN401 - Django's signature
        """Refuse rather than guess: a misspelt clinic or name makes nothing."""
        clinic = self._clinic(options["clinic"], new=options["new_clinic"])
        user = User.objects.filter(username=options["username"]).first()
        if user is None:
            user = self._account(options["username"], options["full_name"])
        elif options["full_name"] not in (None, user.full_name):
            raise CommandError(f"{user.username} is {user.full_name}; an account is not given another name here.")
        Membership.objects.update_or_create(
            user=user, clinic=clinic, defaults={"role": options["role"], "ended_at": None}
        )
        self.stdout.write(f"{user.full_name} ({user.username}) is {options['role']} in {clinic.name} ({clinic.pk}).")

    def _clinic(self, name: str, *, new: bool) -> Clinic:
        found = list(Clinic.objects.filter(name=name))
        if new and not found:
            return Clinic.objects.create(name=name)
        if new:
            raise CommandError(f"There is a clinic named {name} already.")
        if len(found) != 1:
            known = ", ".join(Clinic.objects.order_by("name").values_list("name", flat=True)) or "none"
            raise CommandError(f"There are {len(found)} clinics named {name}; known are: {known}.")
        return found[0]

    def _account(self, username: str, full_name: str | None) -> User:
        if not full_name:
            raise CommandError(f"There is no account {username}; give --full-name to make it.")
        password = getpass.getpass(f"Password for {username}: ")
        try:
            validate_password(password, User(username=username, full_name=full_name))
            return User.objects.create_user(username, password=password, full_name=full_name)
        except ValidationError as error:
            raise CommandError(" ".join(error.messages)) from error
