"""``manage.py new_card_key``: another key for a clinic's card codes."""

from __future__ import annotations

from argparse import ArgumentParser
from typing import Any

from django.core.management.base import BaseCommand, CommandError

from clinic.people import card_keys
from clinic.people.models import Clinic


class Command(BaseCommand):
    """Codes printed from now on are sealed with the new key; older paper is still read."""

    help = "Make a new key for the codes on a clinic's cards."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Which clinic."""
        parser.add_argument("--clinic", required=True, help="The clinic's name.")

    def handle(self, *_: Any, **options: Any) -> None:  # noqa: ANN401 - Django's signature
        """The key itself is printed nowhere."""
        clinics = list(Clinic.objects.filter(name=options["clinic"]))
        if len(clinics) != 1:
            raise CommandError(f"There are {len(clinics)} clinics named {options['clinic']}.")
        card_keys.make(clinics[0].pk)
        self.stdout.write(f"{clinics[0].name} has a new card key. Devices take it when they next hear from the clinic.")
