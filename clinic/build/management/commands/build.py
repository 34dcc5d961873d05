"""``manage.py build``: makes the app and its engine ready to be served."""

from __future__ import annotations

from typing import Any

from django.core.management.base import BaseCommand, CommandError

from clinic.build.building import build
from clinic.build.failure import BuildFailed
from clinic.build.folders import folders
from clinic.build.report import sizes, table
from clinic.build.steps import Steps


class Command(BaseCommand):
    """Builds what is missing or out of date, and prints what a phone will download."""

    help = "Build the phone app and its engine into .build/."
    requires_system_checks: list[str] = []  # noqa: RUF012 - Django's own way

    def handle(self, **_: Any) -> None:  # noqa: ANN401 - Django's own options
        """Run the build; a failure is a sentence, not a traceback."""
        self.stdout.ending = ""
        places = folders()
        try:
            release = build(places, Steps(self.stdout))
        except (BuildFailed, OSError) as error:
            raise CommandError(str(error)) from error
        self.stdout.write(table(sizes(release, places.site)) + "\n")
