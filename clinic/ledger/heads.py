"""Heads: the records that no other record supersedes. Two heads for one thing are a conflict, which people settle."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol, TypeVar
from uuid import UUID

from django.db.models import Exists, OuterRef, QuerySet

from clinic.ledger.models import Record, Supersession


class Versioned(Protocol):
    """Anything with an id that may supersede others: a stored record, or one on its way."""

    @property
    def id(self) -> UUID:
        """Its own id."""
        ...

    @property
    def supersedes(self) -> tuple[UUID, ...]:
        """The ids it replaces."""
        ...


Version = TypeVar("Version", bound=Versioned)


def heads(records: Iterable[Version]) -> list[Version]:
    """The records of ``records`` that none of them supersedes, in the order given."""
    known = list(records)
    superseded = {replaced for record in known for replaced in record.supersedes}
    return [record for record in known if record.id not in superseded]


def only_heads(records: QuerySet[Record]) -> QuerySet[Record]:
    """``records`` without those that a record of the ledger supersedes."""
    return records.filter(~Exists(Supersession.objects.filter(superseded=OuterRef("pk"))))
