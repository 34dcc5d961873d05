"""A ledger as it is after its backup was restored: what came later is gone, and the feed has another id."""

from __future__ import annotations

from django.db import connection

from clinic.ledger import guards
from clinic.ledger.commands import renew_feed
from clinic.ledger.models import FeedCounter, Record, Supersession
from clinic.people.models import Clinic


def lose_all_after(clinic: Clinic, position: int) -> None:
    """Take the clinic's ledger back to ``position``, past the guards that let nobody do so."""
    connection.check_constraints()  # PostgreSQL changes no trigger of a table with checks still to come
    guards.take_down(connection, guards.KEYS)
    try:
        gone = Record.objects.filter(clinic=clinic, position__gt=position)
        for rows in (Supersession.objects.filter(record__in=gone), gone):
            rows._raw_delete("default")  # noqa: SLF001 - the models' own way is to refuse
        FeedCounter.objects.filter(clinic=clinic).update(position=position)
        connection.check_constraints()
    finally:
        guards.put_up(connection, guards.KEYS)
    renew_feed(clinic.pk)
