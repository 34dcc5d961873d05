"""``manage.py catalogues``: what is spoken in the sources into the catalogues, for a translator to fill in."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from django.conf import settings
from django.core.management.base import BaseCommand

from clinic.locale.collecting import collect
from clinic.locale.compiled import catalogue_files
from clinic.locale.keeping import bring_up


class Command(BaseCommand):
    """Adds new texts empty and takes stale ones away."""

    help = "Bring the catalogues of clinic/locale up to what the sources say."

    def handle(self, **_: Any) -> None:  # noqa: ANN401 - Django's own options
        """One line a language."""
        project = Path(settings.BASE_DIR)
        spoken = collect(project)
        for language, path in catalogue_files(project).items():
            came, went = bring_up(path, spoken)
            self.stdout.write(f"{language}: {came} to translate, {went} taken away")
