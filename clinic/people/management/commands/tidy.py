"""``manage.py tidy``: removes what has served its time, once a day."""

from __future__ import annotations

from typing import Any

from django.contrib.sessions.models import Session
from django.core.management.base import BaseCommand
from django.utils import timezone

from clinic.people import lockout


class Command(BaseCommand):
    """Ended sessions and forgotten tries to sign in.

    Records and the audit trail are kept for good: nothing of ours removes them, and the database refuses to.
    """

    help = "Remove ended sessions and forgotten tries to sign in; never records, never the audit trail."

    def handle(self, *_: Any, **__: Any) -> None:  # noqa: ANN401 - Django's signature
        """Both, and how many of each."""
        now = timezone.now()
        sessions, _of_each = Session.objects.filter(expire_date__lt=now).delete()
        tries = lockout.forget(now=now)
        self.stdout.write(f"Removed: {sessions} ended sessions, {tries} forgotten tries to sign in.")
