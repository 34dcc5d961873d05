"""What theatre devices pull: the records that belong to cards, of patients with a plan signed in the last days.

Never examinations, and of plans only those that were signed or that replace a signed one (a card must be seen to be
out of date). What speaks of a record that theatre may have (its ``about``) comes with it, if its kind says
``Theatre.OF_CARDS``. Of a person who was entered twice theatre has the other entry's patient records as well, and the
join, for an allergy may stand there alone; a join that is taken back closes them. What the clinic as a whole gives
theatre (``Theatre.ALL``) comes always, together with what takes it back, and never leaves.

A patient's record is older than the signature that opens it to theatre, and a device may have pulled beyond it by
then; so each record has a place in the theatre's feed: the position at which it was opened. A place changes only when
the signature or the join that opened it ends and a later one takes over; the record then comes again, which does no
harm.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from uuid import UUID

from django.conf import settings
from django.db.models import Q, QuerySet

from clinic.ledger.heads import RETRACTION
from clinic.ledger.models import Record
from clinic.ledger.upto import upto
from clinic.people.role import Role
from clinic.sync.joined import JOIN, Persons, connected, ever_joined
from clinic.sync.kinds import KINDS
from clinic.sync.kinds.kind import Theatre

READ_EVERYTHING = frozenset({Role.SURGEON, Role.CLINIC, Role.COORDINATOR})
"""The roles that pull the whole feed; every other role, one to come included, has the theatre's scope."""

MAKING_CARDS = frozenset({"patient", "plan", "signature", JOIN})
"""The kinds that have a rule of their own in :func:`card_records`; the others follow what they speak of."""

RULES = "joined"
"""Another word whenever :func:`card_records` opens other records than before, so that devices pull them afresh."""


def kinds_of(theatre: Theatre) -> tuple[str, ...]:
    """The kinds of which theatre is handed this much."""
    return tuple(kind.name for kind in KINDS.values() if kind.theatre is theatre)


@dataclass(frozen=True, kw_only=True)
class Row:
    """What the scope must know of a record."""

    id: UUID
    kind: str
    patient: UUID
    position: int
    supersedes: tuple[UUID, ...]
    about_id: UUID | None
    in_window: bool


def name() -> str:
    """The scope's name in cursors: with another window, or other rules, the places are others."""
    return f"theatre-{RULES}-{settings.THEATRE_DAYS}"


def places(clinic: UUID, *, up_to: int, now: datetime, beyond: int = 0) -> dict[UUID, int]:
    """The place of every record that theatre may have, of the clinic's records up to a position.

    With ``beyond`` of those at least whose place lies beyond it. A record is opened by one of its person's, so only
    the persons are looked at of whom something stands there: a device that has caught up costs what is new.
    """
    since = _window(now)
    persons = ever_joined(clinic, up_to=up_to)
    signed = _signed(clinic, up_to).filter(received_at__gte=since)
    if beyond:
        new = Record.objects.filter(clinic=clinic, position__gt=beyond, position__lte=up_to)
        twice = new.filter(patient__in=persons.groups).values_list("patient", flat=True) if persons.groups else ()
        signed = signed.filter(Q(patient__in=new.values("patient")) | Q(patient__in=persons.of_all(twice)))
    by_person = _rows(clinic, _patients(signed), persons, up_to=up_to, since=since)
    of_cards = {row: place for rows in by_person for row, place in opened(rows).items()}
    of_all = _always(clinic, up_to)
    if beyond:
        of_all = of_all.filter(position__gt=beyond)
    return of_cards | dict(of_all.values_list("pk", "position"))


def left(clinic: UUID, *, up_to: int, since: datetime, now: datetime) -> frozenset[UUID]:
    """The records that theatre could have at ``since`` or later and may have no longer ``now``.

    Only a signature's leaving the window closes a patient, so only those patients are looked at whose signature did.
    """
    ended = _signed(clinic, up_to).filter(received_at__gte=_window(since), received_at__lt=_window(now))
    persons = ever_joined(clinic, up_to=up_to)
    found: set[UUID] = set()
    for rows in _rows(clinic, _patients(ended), persons, up_to=up_to, since=_window(now)):
        found |= card_records(_as_if_in_window(rows)) - card_records(rows)
    return frozenset(found)


def parted(clinic: UUID, *, beyond: int, up_to: int, now: datetime) -> frozenset[UUID]:
    """The records that theatre could have up to ``beyond`` and may have no longer, since a join was taken back."""
    ends = Record.objects.filter(clinic=clinic, kind=RETRACTION, position__gt=beyond, position__lte=up_to)
    patients = _patients(ends.filter(about__kind=JOIN))
    found: set[UUID] = set()
    if patients:
        persons = ever_joined(clinic, up_to=up_to)
        for rows in _rows(clinic, patients, persons, up_to=up_to, since=_window(now)):
            before = [row for row in _as_if_in_window(rows) if row.position <= beyond]
            found |= card_records(before) - card_records(rows)
    return frozenset(found)


def _as_if_in_window(rows: Sequence[Row]) -> list[Row]:
    return [replace(row, in_window=True) for row in rows]


def _patients(records: QuerySet[Record]) -> set[UUID]:
    return set(records.values_list("patient", flat=True))


def _window(now: datetime) -> datetime:
    return now - timedelta(days=settings.THEATRE_DAYS)


def _signed(clinic: UUID, up_to: int) -> QuerySet[Record]:
    return upto(Record.objects.filter(clinic=clinic, kind="signature"), up_to)


def _always(clinic: UUID, up_to: int) -> QuerySet[Record]:
    """What theatre has whoever is operated on, at the places where it stands in the feed."""
    kinds = kinds_of(Theatre.ALL)
    given = Q(kind__in=kinds)
    taken_back = Q(kind=RETRACTION, about__kind__in=kinds)
    # Said first, so that an index finds them: "one or the other" alone is looked for in the whole ledger.
    few = Record.objects.filter(clinic=clinic, kind__in=[*kinds, RETRACTION])
    return upto(few, up_to).filter(given | taken_back)


def _rows(clinic: UUID, patients: set[UUID], persons: Persons, *, up_to: int, since: datetime) -> Iterable[list[Row]]:
    """What there is about each of the patients, person by person, in feed order."""
    entries = persons.of_all(patients)
    records = (
        upto(Record.objects.filter(clinic=clinic, patient__in=entries, kind__in=kinds_of(Theatre.OF_CARDS)), up_to)
        .only("id", "kind", "position", "patient", "about", "received_at")
        .prefetch_related("supersessions")
        .order_by("position")
    )
    by_person: dict[frozenset[UUID], list[Row]] = defaultdict(list)
    for record in records:
        by_person[persons.of(record.patient)].append(
            Row(
                id=record.pk,
                kind=record.kind,
                patient=record.patient,
                position=record.position,
                supersedes=record.supersedes,
                about_id=record.about_id,
                in_window=record.received_at >= since,
            )
        )
    return by_person.values()


def opened(rows: Sequence[Row]) -> dict[UUID, int]:
    """The place of each of one person's records that theatre may have; ``rows`` in feed order.

    It is where the record was opened last, for one that was closed meanwhile has to come again.
    """
    found: dict[UUID, int] = {}
    for count, row in enumerate(rows, start=1):
        found = {record: found.get(record, row.position) for record in card_records(rows[:count])}
    return found


def card_records(rows: Iterable[Row]) -> set[UUID]:
    """Which of one person's records belong to cards, once a plan was signed in the window; else none."""
    known = list(rows)
    signed = {row.patient for row in known if row.kind == "signature" and row.in_window}
    if not signed:
        return set()
    taken_back = {row.about_id for row in known if row.kind == RETRACTION}
    joins = [row for row in known if row.kind == JOIN and row.id not in taken_back]
    of_person = connected((row.patient, row.about_id) for row in joins).of_all(signed)
    signatures = [row for row in known if row.kind == "signature" and row.patient in signed]
    plans = {row.about_id for row in signatures}
    for row in known:
        if row.kind == "plan" and not plans.isdisjoint(row.supersedes):
            plans.add(row.id)
    may = {row.id for row in known if row.kind == "patient" and row.patient in of_person}
    may |= {row.id for row in joins if row.patient in of_person}
    may |= {row.id for row in signatures} | {row.id for row in known if row.kind == "plan" and row.id in plans}
    for row in known:  # in feed order, in which nothing is spoken of before it is there
        if row.kind not in MAKING_CARDS and row.about_id in may:
            may.add(row.id)
    return may
