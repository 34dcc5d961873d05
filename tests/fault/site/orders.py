"""What the nursery does to a site besides starting it: backup, restore, and servers that are not as they should be."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from django.db import connection
from django.utils import timezone

from clinic.backup.making import back_up as make_backup
from clinic.backup.restoring import restore as restore_backup
from tests.fault.site import broken, full_disk


def prepare(*, days_later: float = 0, fault: str = "") -> None:
    """In a server before it serves: its clock, and what is broken in it on purpose."""
    connection.settings_dict["CONN_MAX_AGE"] = None  # a new one for each request is a fifth of a run's time
    full_disk.mind()
    if days_later:
        now = timezone.now
        timezone.now = lambda: now() + timedelta(days=days_later)
    if fault:
        broken.FAULTS[fault]()


def back_up(path: str) -> None:
    """While the clinic works on."""
    make_backup(Path(path))


def restore(path: str) -> None:
    """With the server stopped, by the site's own way."""
    restore_backup(Path(path), replacing=True)
