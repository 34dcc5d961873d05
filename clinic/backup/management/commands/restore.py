"""``manage.py restore FILE``."""

from __future__ import annotations

from argparse import ArgumentParser
from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError

from clinic.backup.failure import BackupFailed
from clinic.backup.restoring import restore


class Command(BaseCommand):
    """The server must be stopped. What was revoked, locked or given after the backup must be done again."""

    help = "Put a backup in the place of the database. Stop the server first."
    requires_system_checks: list[str] = []  # noqa: RUF012 - the database may have no tables yet

    def add_arguments(self, parser: ArgumentParser) -> None:
        """What, and whether records may go."""
        parser.add_argument("file", type=Path)
        parser.add_argument("--replace", action="store_true", help="The records that the database holds may go.")

    def handle(self, *_: Any, file: Path, replace: bool, **__: Any) -> None:  # noqa: ANN401 - Django's signature
        """Restore, and say what must be done now."""
        try:
            found = restore(file, replacing=replace)
        except BackupFailed as why:
            raise CommandError(str(why)) from why
        self.stdout.write(
            f"Restored {found}.\n"
            "Every device pulls afresh, and everybody signs in again. "
            "Accounts, roles, passwords and revoked devices are as they were at the backup: look through them now."
        )
