"""What a view tells of its call, kept with the request until the entry is written."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any, Protocol
from uuid import UUID

PLACE = "clinic.audit.facts"


class HasMeta(Protocol):
    """Django's request, or the framework's around it."""

    @property
    def META(self) -> dict[str, Any]:  # noqa: N802 - Django's name
        """The request's own dictionary."""


@dataclass
class Facts:
    """Filled in by the view."""

    who: str = ""
    records: list[str] = field(default_factory=list)
    patients: list[str] = field(default_factory=list)
    positions: tuple[int, int] | None = None
    handed_out_nothing: bool = False

    def name(self, *, records: Iterable[UUID | str | None] = (), patients: Iterable[UUID | str] = ()) -> None:
        """Records and patients, by id."""
        self.records += [str(each) for each in records if each]
        self.patients += sorted({str(each) for each in patients})

    def cover(self, positions: Iterable[int | None]) -> None:
        """The part of the clinic's feed from the lowest to the highest of these."""
        known = [position for position in positions if position]
        self.positions = (min(known), max(known)) if known else None


def facts_of(request: HasMeta) -> Facts:
    """The facts of this request."""
    facts: Facts = request.META.setdefault(PLACE, Facts())
    return facts
