"""The pull cursor: opaque to devices, and to us a feed, a scope, a position and a moment.

It is not signed: whoever forges one sees records of a clinic that they may pull from anyway, in another order.
"""

from __future__ import annotations

import base64
import binascii
from dataclasses import dataclass
from uuid import UUID

VERSION = "2"
LARGEST_POSITION = 2**63 - 1
LARGEST_MOMENT = 253402300799  # the last second of the year 9999


@dataclass(frozen=True, kw_only=True)
class Cursor:
    """Everything of ``scope`` up to ``position`` in ``feed`` has been handed out.

    ``moment`` (seconds since 1970) is when the scope was last looked at, for scopes that records leave as time goes by;
    0 for the others.
    """

    feed: UUID
    scope: str
    position: int
    moment: int = 0

    def __str__(self) -> str:
        """The text that devices keep."""
        plain = f"{VERSION} {self.feed.hex} {self.scope} {self.position} {self.moment}"
        return base64.urlsafe_b64encode(plain.encode()).decode().rstrip("=")


def read(text: str) -> Cursor | None:
    """The cursor, or None for a text that is none of this version."""
    try:
        plain = base64.b64decode(text.encode() + b"=" * (-len(text) % 4), altchars=b"-_", validate=True).decode()
        version, feed, scope, position, moment = plain.split(" ")
        cursor = Cursor(feed=UUID(hex=feed), scope=scope, position=int(position), moment=int(moment))
    except (ValueError, binascii.Error):
        return None
    in_range = 0 <= cursor.position <= LARGEST_POSITION and 0 <= cursor.moment <= LARGEST_MOMENT
    if version != VERSION or not in_range or str(cursor) != text:
        return None
    return cursor
