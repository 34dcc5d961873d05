"""What one operation needs, from its doses and its set-up."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from planner.kit import articles
from planner.records.practice import Item
from planner.setup.items.adjustment import ADJUSTABLE
from planner.setup.items.anaesthesia import BLOCK, DROPS
from planner.setup.items.display import TABLET
from planner.setup.items.suture import STAYING
from planner.setup.making import LATEX
from planner.values.kit import CaseNeeds, Need
from planner.values.option import Dose
from planner.values.set_up import SetUpSheet
from planner.values.sewing import STAYS

NEEDLES_PER_SUTURE = 2


def needs(doses: tuple[Dose, ...], sheet: SetUpSheet) -> CaseNeeds:
    """Nothing but what stands on the sheet and in the plan."""
    return CaseNeeds(needs=tuple(_needs(doses, sheet)))


def _needs(doses: tuple[Dose, ...], sheet: SetUpSheet) -> Iterator[Need]:
    choice = {each.item: each.choice for each in sheet.items}
    if doses:
        yield from _sutures(doses, choice[Item.SUTURE])
        yield Need(article=articles.CLOSING_SUTURE, pieces=len({dose.eye for dose in doses}))
        yield Need(article=articles.needle(choice[Item.NEEDLE]), pieces=NEEDLES_PER_SUTURE * len(doses))
    yield Need(article=articles.INSTRUMENT_SET, pieces=1)
    if any(notice.code == LATEX for notice in sheet.notices):
        yield Need(article=articles.LATEX_FREE, pieces=1)
    if choice[Item.ADJUSTMENT] == ADJUSTABLE:
        yield Need(article=articles.ADJUSTING_SET, pieces=1)
        yield Need(article=articles.PRISMS, pieces=1)
    yield Need(article=articles.magnification(choice[Item.MAGNIFICATION]), pieces=1)
    if choice[Item.ANAESTHESIA] == BLOCK:
        yield Need(article=articles.BLOCK_SET, pieces=1)
    elif choice[Item.ANAESTHESIA] == DROPS:
        yield Need(article=articles.DROPS, pieces=1)
    if choice[Item.DISPLAY] == TABLET:
        yield Need(article=articles.TABLET_STAND, pieces=1)


def _sutures(doses: tuple[Dose, ...], choice: str) -> Iterator[Need]:
    """One for each muscle; a fold and a split tendon take one that stays, as their cards say."""
    counted = Counter(STAYING if dose.operation in STAYS else choice for dose in doses)
    for suture, pieces in counted.items():
        yield Need(article=articles.suture(suture), pieces=pieces)
