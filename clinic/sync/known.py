"""What the clinic's ledger knows of the records that a batch refers to, the batch's own accepted records included."""

from __future__ import annotations

import json
from collections.abc import Set as AbstractSet
from dataclasses import dataclass, field
from typing import TypeVar
from uuid import UUID

from clinic.ledger.commands import Entry
from clinic.ledger.heads import RETRACTION
from clinic.ledger.models import Record, Supersession
from clinic.people.models import User
from clinic.sync.result import Rejected
from planner.codec import read

Body = TypeVar("Body")


@dataclass(frozen=True, kw_only=True)
class Reference:
    """A record that another one refers to. ``body`` is its canonical JSON text."""

    id: UUID
    kind: str
    patient: UUID
    digest: str
    body: str

    def read(self, cls: type[Body]) -> Body:
        """The body as a value of the engine."""
        return read(cls, json.loads(self.body))


@dataclass(frozen=True)
class Known:
    """Records by id, the ids that were superseded or taken back, and who of those asked about has an account."""

    records: dict[UUID, Reference] = field(default_factory=dict)
    gone: set[UUID] = field(default_factory=set)
    authors: frozenset[str] = frozenset()

    def find(self, record_id: UUID | str, *, kind: str, patient: UUID, where: str) -> Reference:
        """The record of that kind and patient; Rejected, retryable if it may still come."""
        found = self.require(UUID(record_id) if isinstance(record_id, str) else record_id, where=where)
        if found.kind != kind:
            raise Rejected("reference_kind", f"This refers to a record that is no {kind}.", field=where)
        if found.patient != patient:
            raise Rejected("patient_differs", "This refers to a record of another patient.", field=where)
        return found

    def require(self, record_id: UUID, *, where: str = "body") -> Reference:
        """The record, whatever it is; Rejected if it may still come."""
        found = self.records.get(record_id)
        if found is None:
            text = "The server does not have a record that this one refers to. It may still be on its way."
            raise Rejected("reference_unknown", text, field=where, retryable=True)
        return found

    def add(self, entry: Entry) -> None:
        """From now on ``entry`` counts as known."""
        self.records[entry.id] = Reference(
            id=entry.id, kind=entry.kind, patient=entry.patient, digest=entry.digest, body=entry.body
        )
        self.gone.update(entry.supersedes)
        if entry.kind == RETRACTION and entry.about:
            self.gone.add(entry.about)


def load(clinic: UUID, ids: AbstractSet[UUID], *, authors: frozenset[str] = frozenset()) -> Known:
    """What the ledger knows of ``ids``: three queries, however many they are, and one more for ``authors``."""
    records, gone = (_records(clinic, ids), _gone(ids)) if ids else ({}, set())
    return Known(records, gone, _with_an_account(authors) if authors else authors)


def _records(clinic: UUID, ids: AbstractSet[UUID]) -> dict[UUID, Reference]:
    records = Record.objects.filter(clinic=clinic, pk__in=ids).only("id", "kind", "patient", "digest", "body")
    return {
        record.pk: Reference(
            id=record.pk, kind=record.kind, patient=record.patient, digest=record.digest, body=record.body
        )
        for record in records
    }


def _gone(ids: AbstractSet[UUID]) -> set[UUID]:
    superseded = Supersession.objects.filter(superseded__in=ids).values_list("superseded_id", flat=True)
    retracted = Record.objects.filter(about__in=ids, kind=RETRACTION).values_list("about_id", flat=True)
    return {*superseded, *(target for target in retracted if target)}


def _with_an_account(authors: frozenset[str]) -> frozenset[str]:
    return frozenset(User.objects.filter(username__in=authors).values_list("username", flat=True))
