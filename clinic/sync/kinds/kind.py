"""What a kind of record is made of."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from typing import Generic, TypeVar
from uuid import UUID

from clinic.ledger.commands import Entry
from clinic.people.role import Role
from clinic.sync.known import Known
from clinic.sync.sender import Sender

Body = TypeVar("Body")


class Theatre(Enum):
    """What theatre devices are handed of a kind; :mod:`clinic.sync.scope` works it out."""

    NOTHING = "nothing"
    OF_CARDS = "of cards"
    """What belongs to the card of a patient with a plan signed in the window. The kinds that cards are made of have
    rules of their own in the scope; of every other kind it is what is ``about`` a record that is open itself."""
    ALL = "all"


class Owner(Enum):
    """Whom a record stands with: the envelope's ``patient`` is the id of that one's first version."""

    PATIENT = "patient"
    CLINIC = "clinic"
    """The clinic: the first version's id stands where other records name their patient."""


@dataclass(frozen=True, kw_only=True)
class Incoming(Generic[Body]):
    """A record on its way in: ready to be appended if its kind's rules let it."""

    entry: Entry
    body: Body
    sender: Sender
    vouched: bool = False
    """The server took it once before: it came with a receipt (:mod:`clinic.sync.receipt`)."""


def _nothing(_body: object) -> None:
    return None


def _no_references(_body: object) -> tuple[UUID, ...]:
    return ()


def _no_check(_incoming: object) -> None:
    return None


def _no_fit(_incoming: object, _known: Known) -> None:
    return None


@dataclass(frozen=True, kw_only=True)
class Kind(Generic[Body]):
    """The rules of one kind; see :mod:`clinic.sync.kinds`."""

    name: str
    body: type[Body]
    writers: frozenset[Role]
    owner: Owner = Owner.PATIENT
    theatre: Theatre = Theatre.NOTHING
    about: Callable[[Body], UUID | None] = _nothing
    references: Callable[[Body], tuple[UUID, ...]] = _no_references
    check: Callable[[Incoming[Body]], None] = _no_check
    fit: Callable[[Incoming[Body], Known], None] = _no_fit
