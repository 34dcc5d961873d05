"""``manage.py audit``: search the audit trail, and export what is found."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, ArgumentTypeError
from datetime import UTC, datetime
from typing import Any
from uuid import UUID

from django.core.management.base import BaseCommand

from clinic.audit.export import write_csv, write_json
from clinic.audit.search import Search, find


class Command(BaseCommand):
    """Prints entries, oldest first, as JSON lines or CSV; redirect it into a file to export."""

    help = "Search and export the audit trail: who read and wrote what."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Each narrows the search."""
        parser.add_argument("--who", help="an account's name")
        parser.add_argument("--device", type=UUID)
        parser.add_argument("--clinic", type=UUID)
        parser.add_argument("--call", help="a part of the call, such as pull or card")
        parser.add_argument("--record", type=UUID, help="a record's id, however it was handed out")
        parser.add_argument("--patient", type=UUID, help="a patient's id: every call about any of the records")
        parser.add_argument("--since", type=_moment, help="2026-11-25 or 2026-11-25T09:30:00+01:00")
        parser.add_argument("--until", type=_moment)
        parser.add_argument("--csv", action="store_true", help="CSV instead of JSON lines")

    def handle(self, *_: Any, csv: bool, **options: Any) -> None:  # noqa: ANN401 - Django's signature
        """Entry by entry, however many there are."""
        wanted = {name: options[name] for name in Search.__dataclass_fields__}
        entries = find(Search(**wanted)).iterator()
        (write_csv if csv else write_json)(entries, options.get("stdout") or sys.stdout)


def _moment(text: str) -> datetime:
    try:
        moment = datetime.fromisoformat(text)
    except ValueError as error:
        raise ArgumentTypeError(f"{text} is no date and no moment") from error
    return moment if moment.tzinfo else moment.replace(tzinfo=UTC)
