"""Every article: how it is called, under which heading it is packed and how it is counted.

CONSUMED  used up: all days are added, and spare ones are taken
SET       sterile for an operation, cleaned overnight: the fullest day counts, and spare ones are taken
SHARED    stays with a team all day: one for each team, the fullest day counts
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from types import MappingProxyType
from typing import Final

from planner.records.practice import Item
from planner.setup.register import BY_ITEM
from planner.values.kit import KitGroup


class Counted(Enum):
    """How pieces add up."""

    CONSUMED = "consumed"
    SET = "set"
    SHARED = "shared"


@dataclass(frozen=True, kw_only=True)
class Article:
    """One thing that is packed."""

    words: str
    group: KitGroup
    counted: Counted
    why: str


CLOSING_SUTURE = "closing_suture"
INSTRUMENT_SET = "instrument_set"
LATEX_FREE = "latex_free"
ADJUSTING_SET = "adjusting_set"
PRISMS = "prisms"
BLOCK_SET = "block_set"
DROPS = "anaesthetic_drops"
TABLET_STAND = "tablet_stand"


def suture(choice: str) -> str:
    """The article of a suture."""
    return f"suture-{choice}"


def needle(choice: str) -> str:
    """The article of a needle."""
    return f"needle-{choice}"


def magnification(choice: str) -> str:
    """The article of a loupe or microscope."""
    return f"magnification-{choice}"


def _ways(item: Item) -> dict[str, str]:
    return {way.id: way.words for way in BY_ITEM[item].ways if not way.never}


ARTICLES: Final[Mapping[str, Article]] = MappingProxyType(
    {
        **{
            suture(choice): Article(
                words=f"Suture with two needles: {words[0].lower()}{words[1:]}",
                group=KitGroup.SUTURES,
                counted=Counted.CONSUMED,
                why="one for each muscle",
            )
            for choice, words in _ways(Item.SUTURE).items()
        },
        CLOSING_SUTURE: Article(
            words="Thin absorbable suture for the conjunctiva",
            group=KitGroup.SUTURES,
            counted=Counted.CONSUMED,
            why="one for each eye",
        ),
        **{
            needle(choice): Article(
                words=f"{words}, on the sutures above",
                group=KitGroup.NEEDLES,
                counted=Counted.CONSUMED,
                why="two on each suture, to be counted out",
            )
            for choice, words in _ways(Item.NEEDLE).items()
        },
        INSTRUMENT_SET: Article(
            words="Eye muscle set: lid speculum, hooks, forceps, scissors, needle holder, caliper",
            group=KitGroup.INSTRUMENTS,
            counted=Counted.SET,
            why="one for each operation, or as many as the clinic lets one set serve",
        ),
        LATEX_FREE: Article(
            words="Latex-free gloves for everybody at the table, and a latex-free set-up",
            group=KitGroup.INSTRUMENTS,
            counted=Counted.CONSUMED,
            why="one for each patient who does not bear latex",
        ),
        ADJUSTING_SET: Article(
            words="Adjusting set: needle holder, tying forceps, scissors, anaesthetic drops",
            group=KitGroup.ADJUSTING,
            counted=Counted.SET,
            why="one for each adjustable operation",
        ),
        PRISMS: Article(
            words="Prism bars, horizontal and vertical, with cover and fixation target",
            group=KitGroup.ADJUSTING,
            counted=Counted.SHARED,
            why="one set for each team that adjusts",
        ),
        **{
            magnification(choice): Article(
                words=words, group=KitGroup.MAGNIFICATION, counted=Counted.SHARED, why="one for each team that needs it"
            )
            for choice, words in _ways(Item.MAGNIFICATION).items()
        },
        BLOCK_SET: Article(
            words="Block set: blunt cannula, syringe, local anaesthetic",
            group=KitGroup.ANAESTHESIA,
            counted=Counted.CONSUMED,
            why="one for each operation under a block",
        ),
        DROPS: Article(
            words="Anaesthetic drops",
            group=KitGroup.ANAESTHESIA,
            counted=Counted.CONSUMED,
            why="one for each operation under drops",
        ),
        TABLET_STAND: Article(
            words="Tablet with this app, upright on a stand, charged, and its charger",
            group=KitGroup.DISPLAY,
            counted=Counted.SHARED,
            why="one for each team that hangs the plan on a tablet",
        ),
    }
)
"""In packing order."""
