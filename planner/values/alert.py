"""What the theatre team must know about a patient before it begins."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.provenance import Provenance


class AlertKind(StrEnum):
    """``alert``: it is so. ``ask``: nobody knows, and somebody must ask. ``tell``: something to say aloud."""

    ALERT = "alert"
    ASK = "ask"
    TELL = "tell"


@dataclass(frozen=True, kw_only=True)
class Alert:
    """``topic`` is a word or two, ``text`` a sentence. ``newer``: it became known after the plan was signed.

    ``entry`` names the other entry of this person that says it, where they were entered twice; else it is empty.
    """

    code: str
    kind: AlertKind
    topic: str
    text: str
    provenance: Provenance
    newer: bool = False
    entry: str = ""
