"""How versions of one thing hang together, where the thing's first version stands for all of them."""

from __future__ import annotations

from clinic.ledger.commands import Entry
from clinic.sync.result import Rejected


def check_first_version(entry: Entry, *, code: str) -> None:
    """A first version names itself, a later one another; Rejected with ``code``."""
    is_first = not entry.supersedes
    if is_first != (entry.patient == entry.id):
        text = "A first version carries its own id as patient; a later one supersedes and carries the first one's."
        raise Rejected(code, text, field="patient")
