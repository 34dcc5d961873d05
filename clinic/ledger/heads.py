"""Heads: the records that no other record supersedes or takes back.

Two heads for one thing are a conflict, which people settle. What a retracted record superseded does not come back by
itself: an older figure must not return without a person having said so.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol, TypeVar
from uuid import UUID

from django.db.models import Exists, OuterRef, QuerySet

from clinic.ledger.models import Record, Supersession

RETRACTION = "retraction"


class Versioned(Protocol):
    """Anything that stands in a ledger: a stored record, or one on its way."""

    @property
    def id(self) -> UUID:
        """Its own id."""

    @property
    def kind(self) -> str:
        """Its kind."""

    @property
    def supersedes(self) -> tuple[UUID, ...]:
        """The ids that it replaces."""

    @property
    def about_id(self) -> UUID | None:
        """The record that it speaks of: for a retraction the one it takes back."""


Version = TypeVar("Version", bound=Versioned)


def heads(records: Iterable[Version]) -> list[Version]:
    """The records of ``records`` that none of them supersedes or takes back, in the order given."""
    known = list(records)
    gone: set[UUID | None] = {replaced for record in known for replaced in record.supersedes}
    gone |= {record.about_id for record in known if record.kind == RETRACTION}
    return [record for record in known if record.id not in gone]


def only_heads(records: QuerySet[Record]) -> QuerySet[Record]:
    """``records`` without those that any record of the ledger supersedes or takes back."""
    superseded = Supersession.objects.filter(superseded=OuterRef("pk"))
    retracted = Record.objects.filter(about=OuterRef("pk"), kind=RETRACTION)
    return records.filter(~Exists(superseded), ~Exists(retracted))
