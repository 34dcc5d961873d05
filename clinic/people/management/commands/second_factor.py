"""``manage.py second_factor``: enrol an account's authenticator app, or take it away."""

from __future__ import annotations

from argparse import ArgumentParser
from typing import Any

from django.core.management.base import BaseCommand, CommandError
from django_otp.plugins.otp_totp.models import TOTPDevice

from clinic.people.models import User


class Command(BaseCommand):
    """An authenticator counts once it has shown a right code, so a mistake here locks nobody out."""

    help = "Enrol the second factor of an account, or take it away."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Whose."""
        parser.add_argument("username")
        parser.add_argument("--remove", action="store_true", help="Take it away: the authenticator was lost.")

    def handle(self, *_: Any, username: str, remove: bool, **__: Any) -> None:  # noqa: ANN401 - Django's signature
        """Ask for a code before it counts."""
        user = User.objects.filter(username=username).first()
        if user is None:
            raise CommandError(f"There is no account {username}.")
        enrolled = TOTPDevice.objects.filter(user=user)
        if remove:
            enrolled.delete()
            self.stdout.write(f"{username} signs in with the password alone.")
            return
        if enrolled.filter(confirmed=True).exists():
            raise CommandError(f"{username} has an authenticator already; take it away first (--remove).")
        enrolled.delete()
        authenticator = TOTPDevice.objects.create(user=user, name="authenticator", confirmed=False)
        self.stdout.write(f"Enter this address in the authenticator app:\n\n{authenticator.config_url}\n")
        if not authenticator.verify_token(input("The code that it shows now: ").strip()):
            raise CommandError("That is not the code. Nothing was changed; run the command again.")
        authenticator.confirmed = True
        authenticator.save(update_fields=["confirmed"])
        self.stdout.write(f"{username} signs in with password and code from now on.")
