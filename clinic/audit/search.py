"""Entries by person, device, clinic, call, record, patient and time."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from django.db.models import Q, QuerySet

from clinic.audit.models import Entry
from clinic.ledger.models import Record


@dataclass(frozen=True, kw_only=True)
class Search:
    """What is looked for; what is None does not matter. ``since`` and ``until`` are moments, both included."""

    who: str | None = None
    device: UUID | None = None
    clinic: UUID | None = None
    call: str | None = None
    record: UUID | None = None
    patient: UUID | None = None
    since: datetime | None = None
    until: datetime | None = None


def find(wanted: Search) -> QuerySet[Entry]:
    """The entries, oldest first."""
    plain = {
        "who": wanted.who,
        "device": wanted.device,
        "clinic": wanted.clinic,
        "call__contains": wanted.call,
        "at__gte": wanted.since,
        "at__lte": wanted.until,
    }
    entries = Entry.objects.filter(**{name: value for name, value in plain.items() if value is not None})
    if wanted.record:
        entries = entries.filter(about_records(Record.objects.filter(pk=wanted.record), wanted.record))
    if wanted.patient:
        named = Q(patients__contains=str(wanted.patient))
        entries = entries.filter(named | about_records(Record.objects.filter(patient=wanted.patient), wanted.patient))
    return entries.order_by("at", "pk")


def about_records(records: Iterable[Record], *ids: UUID) -> Q:
    """Entries that name one of the records, or whose part of the feed holds one. ``ids`` may be of no record at all."""
    found = Q(pk__in=[])
    for each in ids:
        found |= Q(records__contains=str(each))
    for record in records:
        found |= Q(records__contains=str(record.pk))
        found |= Q(clinic=record.clinic_id, first_position__lte=record.position, last_position__gte=record.position)
    return found
