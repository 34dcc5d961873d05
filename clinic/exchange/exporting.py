"""A clinic's records as one Bundle, patient by patient."""

from __future__ import annotations

import json
import uuid
from collections.abc import Iterator
from datetime import datetime
from itertools import groupby
from uuid import UUID

from django.utils import timezone

from clinic.audit.models import Entry
from clinic.ledger.models import Record
from clinic.people.models import Clinic
from planner.exchange.fhir import Exporting, bundle, ledger_of

DONE = 200
CALL = "manage.py export_fhir"


def export(clinic: Clinic, *, patient: UUID | None, who: str, now: datetime | None = None) -> dict[str, object]:
    """The Bundle of all records, or of those of one patient; ``who`` answers for it in the audit trail."""
    moment = now or timezone.now()
    records = list(_records(clinic, patient))
    _note(clinic, records, patient, who=who, now=moment)
    exporting = Exporting(export_id=str(uuid.uuid4()), exported_at=moment.isoformat(timespec="seconds"))
    entries: dict[str, object] = {}
    whole = bundle(ledger_of(()), exporting)
    for _, group in groupby(sorted(records, key=_place), key=lambda each: each.patient):
        part = bundle(ledger_of([_told(each) for each in group]), exporting)
        entries |= {str(each["fullUrl"]): each for each in _entries(part)}
    entries |= {str(each["fullUrl"]): each for each in _entries(whole)}
    return whole | {"entry": list(entries.values())}


def _records(clinic: Clinic, patient: UUID | None) -> Iterator[Record]:
    found = Record.objects.filter(clinic=clinic).prefetch_related("supersessions").order_by("position")
    yield from found.filter(patient=patient) if patient else found


def _place(record: Record) -> tuple[str, int]:
    return str(record.patient), record.position


def _entries(part: dict[str, object]) -> list[dict[str, object]]:
    entries = part["entry"]
    return entries if isinstance(entries, list) else []


def _told(record: Record) -> dict[str, object]:
    return {
        "id": str(record.pk),
        "kind": record.kind,
        "clinic": str(record.clinic_id),
        "patient": str(record.patient),
        "author": record.author_id,
        "device": str(record.device),
        "recorded_at": record.recorded_at,
        "supersedes": [str(each) for each in record.supersedes],
        "body": json.loads(record.body),
        "digest": record.digest,
    }


def _note(clinic: Clinic, records: list[Record], patient: UUID | None, *, who: str, now: datetime) -> None:
    """The entry of the audit trail: the positions that were handed out, or the patient's records by id."""
    positions = [each.position for each in records]
    Entry(
        at=now,
        who=who,
        clinic=clinic.pk,
        call=CALL,
        status=DONE,
        first_position=None if patient else min(positions, default=None),
        last_position=None if patient else max(positions, default=None),
        records=" ".join(str(each.pk) for each in records) if patient else "",
        patients=str(patient) if patient else "",
    ).save()
