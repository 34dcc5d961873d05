"""What the server answers to one pushed record."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Status(StrEnum):
    """What became of it."""

    ACCEPTED = "accepted"
    DUPLICATE = "duplicate"
    REJECTED = "rejected"


class Rejected(ValueError):
    """The record does not enter the ledger; ``retryable`` if the same bytes may enter later."""

    def __init__(self, code: str, text: str, *, field: str = "", retryable: bool = False) -> None:
        super().__init__(code)
        self.code = code
        self.text = text
        self.field = field
        self.retryable = retryable


@dataclass(frozen=True, kw_only=True)
class Result:
    """One line of the answer; a rejected record has no position, the others no code."""

    id: str | None
    status: Status
    position: int | None = None
    received_at: str | None = None
    receipt: str | None = None
    code: str | None = None
    text: str | None = None
    field: str | None = None
    retryable: bool | None = None


def stored(status: Status, record_id: str, *, position: int, received_at: str, receipt: str) -> Result:
    """The record is in the ledger."""
    return Result(id=record_id, status=status, position=position, received_at=received_at, receipt=receipt)


def rejected(record_id: str | None, why: Rejected) -> Result:
    """The record is not in the ledger."""
    return Result(
        id=record_id, status=Status.REJECTED, code=why.code, text=why.text, field=why.field, retryable=why.retryable
    )
