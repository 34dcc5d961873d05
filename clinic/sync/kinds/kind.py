"""What a kind of record is made of."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Generic, TypeVar
from uuid import UUID

from clinic.ledger.commands import Entry
from clinic.people.role import Role
from clinic.sync.known import Known
from clinic.sync.sender import Sender

Body = TypeVar("Body")


@dataclass(frozen=True, kw_only=True)
class Incoming(Generic[Body]):
    """A record on its way in: ready to be appended if its kind's rules let it."""

    entry: Entry
    body: Body
    sender: Sender


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
    about: Callable[[Body], UUID | None] = _nothing
    references: Callable[[Body], tuple[UUID, ...]] = _no_references
    check: Callable[[Incoming[Body]], None] = _no_check
    fit: Callable[[Incoming[Body], Known], None] = _no_fit
