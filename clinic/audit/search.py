"""Entries by person, device, clinic, call, record, patient and time."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from django.db.models import Exists, OuterRef, Q, QuerySet, TextField, Value
from django.db.models.expressions import Combinable
from django.db.models.functions import Cast, Replace, StrIndex

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


def about_records(records: QuerySet[Record], named: UUID) -> Q:
    """Entries that name ``named`` or one of the records, or whose part of the feed holds one.

    The database looks the records up itself: a condition for each would be too deep for SQLite from some 500 on.
    """
    on_a_page = records.filter(
        clinic=OuterRef("clinic"), position__gte=OuterRef("first_position"), position__lte=OuterRef("last_position")
    )
    # An id is kept with hyphens on PostgreSQL and without on SQLite.
    mentioned = records.annotate(
        place=StrIndex(_without_hyphens(OuterRef("records")), _without_hyphens(Cast("pk", TextField())))
    ).filter(place__gt=0)
    mentions = ~Q(records="") & Q(Exists(mentioned))
    return Q(records__contains=str(named)) | mentions | Q(Exists(on_a_page))


def _without_hyphens(text: Combinable) -> Replace:
    return Replace(text, Value("-"), Value(""))
