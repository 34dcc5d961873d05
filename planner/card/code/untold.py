"""What a code cannot carry, said on the card that was opened from it alone."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from planner.provenance import Mark, Provenance
from planner.values.alert import Alert, AlertKind
from planner.values.card import Card, CardLine
from planner.values.sewing import TO_SCLERA
from planner.values.statement import Statement

WHY: Final = Provenance(mark=Mark.HOUSE_RULE, source="a code carries what was signed, and nothing that came after it")

UNTOLD: Final = Alert(
    code="from_code_alone",
    kind=AlertKind.ALERT,
    topic="FROM THE CODE ALONE",
    text="Allergies and warnings newer than the signature, and suture and needle chosen in the set-up, "
    "are not in the code: read them on the paper.",
    provenance=WHY,
)

SUTURE: Final = Statement(
    code="suture", text="Suture and needle are not in the code: read them on the paper.", provenance=WHY, facts={}
)


def untold(card: Card) -> Card:
    """The card with that said before all else, and in place of each suture that a set-up may have decided."""
    return replace(card, alerts=(UNTOLD, *card.alerts), lines=tuple(map(_line, card.lines)))


def _line(line: CardLine) -> CardLine:
    return replace(line, sutures=(SUTURE,)) if line.operation in TO_SCLERA else line
