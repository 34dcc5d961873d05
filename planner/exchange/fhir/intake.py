"""What is gathered while a Bundle is read: the fate of each resource, and the records that would be saved."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Annotated

from planner.errors import Fault
from planner.exchange.fhir.row import Entry, Fate, Row
from planner.limits import Length, Unique
from planner.records.plan import Digest, RecordId


@dataclass(frozen=True, kw_only=True)
class Held:
    """A record that is here."""

    id: RecordId
    digest: Digest


@dataclass(frozen=True, kw_only=True)
class Bringer:
    """Who brings a Bundle into which clinic, the kinds that this role writes, and what is here of what it names."""

    clinic: RecordId
    full_name: Annotated[str, Length(1, 120)]
    may: Annotated[tuple[Annotated[str, Length(1, 20)], ...], Length(0, 40)]
    held: Annotated[tuple[Held, ...], Length(0, 5000), Unique(("id",))] = ()


@dataclass(frozen=True, kw_only=True)
class Brought:
    """A record to be saved here under this id; ``body`` is as it came."""

    id: str
    kind: str
    patient: str
    supersedes: tuple[str, ...]
    digest: str
    body: Mapping[str, object]


@dataclass
class Intake:
    """Rows by the place of their entry, and records in an order in which each finds what it refers to."""

    bringer: Bringer
    rows: dict[int, Row] = field(default_factory=dict)
    records: list[Brought] = field(default_factory=list)
    taken: set[str] = field(default_factory=set)

    @cached_property
    def held(self) -> dict[str, str]:
        """The digests of what is here."""
        return {each.id: each.digest for each in self.bringer.held}

    def knows(self, record_id: str) -> bool:
        """Whether a record is here, or taken."""
        return record_id in self.held or record_id in self.taken

    def offer(self, entry: Entry, record: Brought, fault: Fault | None = None) -> bool:
        """Takes the record unless it is here, or ``fault`` or the bringer's role keeps it out; whether it is known."""
        refused = self._refused(record) or fault
        if self.held.get(record.id) == record.digest:
            self.rows[entry.place] = entry.row(Fate.HERE_ALREADY, record.id)
        elif refused:
            self.rows[entry.place] = entry.faulty(refused)
            return False
        else:
            self.records.append(record)
            self.taken.add(record.id)
            self.rows[entry.place] = entry.row(Fate.TAKEN, record.id)
        return True

    def _refused(self, record: Brought) -> Fault | None:
        if record.id in self.held:
            text = "This record is here already, with another content."
            return Fault(code="differs", text=text, value=record.id, allowed="the same content; correct it by hand")
        if record.kind not in self.bringer.may:
            text = "Your role may not write this kind of record."
            return Fault(code="role_may_not", text=text, value=record.kind, allowed=", ".join(self.bringer.may))
        return None
