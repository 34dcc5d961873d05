"""``manage.py backup FILE``."""

from __future__ import annotations

from argparse import ArgumentParser
from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError

from clinic.backup.failure import BackupFailed
from clinic.backup.making import back_up


class Command(BaseCommand):
    """Prints what the backup holds; keep that line to compare with after a restore."""

    help = "Copy the whole database into a file, while the clinic works on. The file holds patient data in clear."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Where."""
        parser.add_argument("file", type=Path)

    def handle(self, *_: Any, file: Path, **__: Any) -> None:  # noqa: ANN401 - Django's signature
        """One file."""
        try:
            self.stdout.write(f"{file}: {back_up(file)}")
        except BackupFailed as why:
            raise CommandError(str(why)) from why
