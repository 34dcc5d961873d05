"""Who was entered twice, of the ledger: the patients whom joins connect, one after the other."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from uuid import UUID

from clinic.ledger.heads import only_heads
from clinic.ledger.models import Record
from clinic.ledger.upto import upto

JOIN = "join"
Pair = tuple[UUID, UUID | None]


@dataclass(frozen=True)
class Persons:
    """Everybody with more than one entry, by each of them."""

    groups: Mapping[UUID, frozenset[UUID]]

    def of(self, patient: UUID) -> frozenset[UUID]:
        """All entries of a person, the one asked about included."""
        return self.groups.get(patient, frozenset({patient}))

    def of_all(self, patients: Iterable[UUID]) -> set[UUID]:
        """All entries of each of these persons."""
        return {entry for patient in patients for entry in self.of(patient)}


def connected(pairs: Iterable[Pair]) -> Persons:
    """Who is one person where each pair is."""
    groups: dict[UUID, frozenset[UUID]] = {}
    for one, other in pairs:
        if other is None:
            continue
        together = groups.get(one, frozenset({one})) | groups.get(other, frozenset({other}))
        groups.update(dict.fromkeys(together, together))
    return Persons(groups)


def ever_joined(clinic: UUID, *, up_to: int) -> Persons:
    """Whom any join connects, those that were taken back included."""
    joins = upto(Record.objects.filter(clinic=clinic, kind=JOIN), up_to)
    return connected(joins.values_list("patient", "about_id"))


def other_entries(clinic: UUID, patient: UUID) -> tuple[UUID, ...]:
    """The other entries of this person, by the joins in force, in an order that every device has too."""
    joins = only_heads(Record.objects.filter(clinic=clinic, kind=JOIN))
    persons = connected(joins.values_list("patient", "about_id"))
    return tuple(sorted(persons.of(patient) - {patient}))
