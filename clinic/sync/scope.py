"""What theatre devices pull: the records that belong to cards, of patients with a plan signed in the last days.

Never examinations, and of plans only those that were signed or that replace a signed one (a card must be seen to be
out of date). What speaks of a record that theatre may have (its ``about``) comes with it, if its kind says
``Theatre.OF_CARDS``. What the clinic as a whole gives theatre (``Theatre.ALL``) comes always, together with what takes
it back, and never leaves.

A patient's record is older than the signature that opens it to theatre, and a device may have pulled beyond it by
then; so each record has a place in the theatre's feed: the position at which it was opened. A place changes only when
the signature that opened it leaves the window and a later one takes over; the record then comes again, which does no
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
from clinic.people.role import Role
from clinic.sync.kinds import KINDS
from clinic.sync.kinds.kind import Theatre

READ_EVERYTHING = frozenset({Role.SURGEON, Role.CLINIC, Role.COORDINATOR})
"""The roles that pull the whole feed; every other role, one to come included, has the theatre's scope."""

MAKING_CARDS = frozenset({"patient", "plan", "signature"})
"""The kinds that have a rule of their own in :func:`card_records`; the others follow what they speak of."""


def kinds_of(theatre: Theatre) -> tuple[str, ...]:
    """The kinds of which theatre is handed this much."""
    return tuple(kind.name for kind in KINDS.values() if kind.theatre is theatre)


@dataclass(frozen=True, kw_only=True)
class Row:
    """What the scope must know of a record."""

    id: UUID
    kind: str
    position: int
    supersedes: tuple[UUID, ...]
    about_id: UUID | None
    in_window: bool


def name() -> str:
    """The scope's name in cursors: with another window the places are others."""
    return f"theatre-{settings.THEATRE_DAYS}"


def places(clinic: UUID, *, up_to: int, now: datetime, beyond: int = 0) -> dict[UUID, int]:
    """The place of every record that theatre may have, of the clinic's records up to a position.

    With ``beyond`` of those at least whose place lies beyond it. A record is opened by one of its patient's, so only
    the patients are looked at of whom something stands there: a device that has caught up costs what is new.
    """
    since = _window(now)
    signed = _signed(clinic, up_to).filter(received_at__gte=since)
    if beyond:
        new = Record.objects.filter(clinic=clinic, position__gt=beyond, position__lte=up_to)
        signed = signed.filter(patient__in=new.values("patient"))
    by_patient = _rows(clinic, signed, up_to=up_to, since=since)
    of_cards = {row: place for rows in by_patient for row, place in opened(rows).items()}
    of_all = _always(clinic, up_to).filter(position__gt=beyond)
    return of_cards | dict(of_all.values_list("pk", "position"))


def left(clinic: UUID, *, up_to: int, since: datetime, now: datetime) -> frozenset[UUID]:
    """The records that theatre could have at ``since`` or later and may have no longer ``now``.

    Only a signature's leaving the window closes a patient, so only those patients are looked at whose signature did.
    """
    ended = _signed(clinic, up_to).filter(received_at__gte=_window(since), received_at__lt=_window(now))
    found: set[UUID] = set()
    for rows in _rows(clinic, ended, up_to=up_to, since=_window(now)):
        was_open = [replace(row, in_window=True) for row in rows]
        found |= card_records(was_open) - card_records(rows)
    return frozenset(found)


def _window(now: datetime) -> datetime:
    return now - timedelta(days=settings.THEATRE_DAYS)


def _signed(clinic: UUID, up_to: int) -> QuerySet[Record]:
    return Record.objects.filter(clinic=clinic, kind="signature", position__lte=up_to)


def _always(clinic: UUID, up_to: int) -> QuerySet[Record]:
    """What theatre has whoever is operated on, at the places where it stands in the feed."""
    kinds = kinds_of(Theatre.ALL)
    given = Q(kind__in=kinds)
    taken_back = Q(kind=RETRACTION, about__kind__in=kinds)
    # Said first, so that an index finds them: "one or the other" alone is looked for in the whole ledger.
    few = Record.objects.filter(clinic=clinic, kind__in=[*kinds, RETRACTION], position__lte=up_to)
    return few.filter(given | taken_back)


def _rows(clinic: UUID, signed: QuerySet[Record], *, up_to: int, since: datetime) -> Iterable[list[Row]]:
    """What there is about the patient of each of the signatures, patient by patient, in feed order."""
    patients = set(signed.values_list("patient", flat=True))
    records = (
        Record.objects.filter(
            clinic=clinic, patient__in=patients, kind__in=kinds_of(Theatre.OF_CARDS), position__lte=up_to
        )
        .only("id", "kind", "position", "patient", "about", "received_at")
        .prefetch_related("supersessions")
        .order_by("position")
    )
    by_patient: dict[UUID, list[Row]] = defaultdict(list)
    for record in records:
        by_patient[record.patient].append(
            Row(
                id=record.pk,
                kind=record.kind,
                position=record.position,
                supersedes=record.supersedes,
                about_id=record.about_id,
                in_window=record.received_at >= since,
            )
        )
    return by_patient.values()


def opened(rows: Sequence[Row]) -> dict[UUID, int]:
    """The place of each of one patient's records that theatre may have; ``rows`` in feed order."""
    found: dict[UUID, int] = {}
    for count, row in enumerate(rows, start=1):
        for opened_now in card_records(rows[:count]) - found.keys():
            found[opened_now] = row.position
    return found


def card_records(rows: Iterable[Row]) -> set[UUID]:
    """Which of one patient's records belong to cards, once a plan was signed in the window; else none."""
    known = list(rows)
    if not any(row.kind == "signature" and row.in_window for row in known):
        return set()
    plans = {row.about_id for row in known if row.kind == "signature"}
    for row in known:
        if row.kind == "plan" and not plans.isdisjoint(row.supersedes):
            plans.add(row.id)
    open_to_all = {row.id for row in known if row.kind in ("patient", "signature")}
    may = open_to_all | {row.id for row in known if row.kind == "plan" and row.id in plans}
    for row in known:  # in feed order, in which nothing is spoken of before it is there
        if row.kind not in MAKING_CARDS and row.about_id in may:
            may.add(row.id)
    return may
