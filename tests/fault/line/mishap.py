"""What may happen to one call on its way, drawn with the place at which it happens."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Kind(StrEnum):
    """Each ends with no answer, but for ``SLOW`` and ``SENT_TWICE``, which end with the server's."""

    REQUEST_LOST = "request lost"
    REQUEST_CUT = "request cut short"
    REPLY_LOST = "reply lost"
    REPLY_CUT = "reply cut short"
    SENT_TWICE = "sent twice at once"
    OVERTAKEN = "held up, and delivered after later ones"
    SLOW = "a slow link"
    DOWN = "the server is down"
    KILLED_SENDING = "server killed while the request comes in"
    KILLED_AT = "server killed at a place in its work"
    KILLED_SOON = "server killed some time after it has the request"


@dataclass(frozen=True)
class Mishap:
    """``share`` (0 to 1) is how far it gets: of the bytes, or of the time; ``place`` is one of the server's."""

    kind: Kind
    share: float = 0.0
    place: str = ""

    def __str__(self) -> str:
        return f"{self.kind.value}{f' ({self.place})' if self.place else f' ({self.share:.2f})'}"
