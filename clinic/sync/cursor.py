"""The pull cursor: opaque to devices, and to us a feed, a scope and a position.

It is not signed: whoever forges one sees records of a clinic that they may pull from anyway, in another order.
"""

from __future__ import annotations

import base64
import binascii
from dataclasses import dataclass
from uuid import UUID

VERSION = "1"
LARGEST_POSITION = 2**63 - 1


@dataclass(frozen=True, kw_only=True)
class Cursor:
    """Everything of ``scope`` up to ``position`` in ``feed`` has been handed out."""

    feed: UUID
    scope: str
    position: int

    def __str__(self) -> str:
        """The text that devices keep."""
        plain = f"{VERSION} {self.feed.hex} {self.scope} {self.position}"
        return base64.urlsafe_b64encode(plain.encode()).decode().rstrip("=")


def read(text: str) -> Cursor | None:
    """The cursor, or None for a text that is none of this version."""
    try:
        plain = base64.b64decode(text.encode() + b"=" * (-len(text) % 4), altchars=b"-_", validate=True).decode()
        version, feed, scope, position = plain.split(" ")
        cursor = Cursor(feed=UUID(hex=feed), scope=scope, position=int(position))
    except (ValueError, binascii.Error):
        return None
    if version != VERSION or not 0 <= cursor.position <= LARGEST_POSITION or str(cursor) != text:
        return None
    return cursor
