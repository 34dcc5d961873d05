"""A restore: what both databases have in common before and after."""

from __future__ import annotations

from pathlib import Path

from django.contrib.sessions.models import Session
from django.core.management import call_command
from django.db import connection, transaction

from clinic.audit.guards import KEYS as AUDITED
from clinic.backup.failure import BackupFailed
from clinic.backup.fingerprint import Fingerprint, fingerprint
from clinic.backup.making import tool
from clinic.ledger import guards
from clinic.ledger.commands import renew_feed
from clinic.ledger.models import FeedCounter, Record


def restore(path: Path, *, replacing: bool) -> Fingerprint:
    """Put the backup in the place of the present database; ``replacing`` says that its records may go.

    Afterwards the tables are brought up to date, every feed has a new id, and nobody is signed in. Nobody may be using
    the database meanwhile.
    """
    if not path.is_file():
        raise BackupFailed(f"There is no file {path}.")
    if not replacing and _holds_records():
        raise BackupFailed("The database holds records. To put the backup in their place, say so (--replace).")
    tool().load(path)
    call_command("migrate", interactive=False, verbosity=0)
    if missing := guards.missing(connection) + guards.missing(connection, AUDITED):
        raise BackupFailed(f"The restored database lacks guards: {', '.join(missing)}.")
    with transaction.atomic():
        for clinic in FeedCounter.objects.values_list("clinic", flat=True):
            renew_feed(clinic)
        Session.objects.all().delete()
    with connection.cursor() as cursor:
        return fingerprint(cursor)


def _holds_records() -> bool:
    return "ledger_record" in connection.introspection.table_names() and Record.objects.exists()
