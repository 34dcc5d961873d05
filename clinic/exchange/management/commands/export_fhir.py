"""``manage.py export_fhir FILE --clinic NAME --who ACCOUNT [--patient ID]``."""

from __future__ import annotations

import json
import os
from argparse import ArgumentParser
from pathlib import Path
from typing import Any
from uuid import UUID

from django.core.management.base import BaseCommand, CommandError

from clinic.exchange.exporting import export
from clinic.people.models import Clinic, Membership
from planner.errors import Refused


class Command(BaseCommand):
    """Identified data leaves the machine: the file is readable by its owner alone, and somebody answers for it."""

    help = "Write a clinic's records, or one patient's, as a FHIR R4 Bundle. The file holds patient data in clear."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """What, where, and who answers for it."""
        parser.add_argument("file", type=Path)
        parser.add_argument("--clinic", required=True, help="the clinic's name")
        parser.add_argument("--who", required=True, help="the account of the clinic that answers for the export")
        parser.add_argument("--patient", type=UUID, help="the id of a patient's first record: this patient alone")

    def handle(self, *_: Any, file: Path, **options: Any) -> None:  # noqa: ANN401 - Django's signature
        """One file, which must not be there yet."""
        clinics = list(Clinic.objects.filter(name=options["clinic"]))
        if len(clinics) != 1:
            raise CommandError(f"There are {len(clinics)} clinics named {options['clinic']}.")
        who = options["who"]
        if not Membership.objects.filter(
            clinic=clinics[0], user__username=who, user__is_active=True, ended_at=None
        ).exists():
            raise CommandError(f"{who} is no account of {clinics[0].name}.")
        try:
            handle = os.open(file, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        except OSError as why:
            raise CommandError(f"{file} cannot be written: {why.strerror}. A file that is there stays.") from why
        with os.fdopen(handle, "w", encoding="utf-8") as out:
            try:
                made = export(clinics[0], patient=options["patient"], who=who)
            except Refused as why:
                raise CommandError(f"The ledger holds what cannot be exported: {why}") from why
            json.dump(made, out, ensure_ascii=False)
        self.stdout.write(f"{file}: written. It holds patient data in clear.")
