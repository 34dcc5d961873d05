"""Suture and needle alone: what the sheet says of them, for whoever else must say the same."""

from __future__ import annotations

from planner.errors import Refused
from planner.records.plan import Plan
from planner.records.practice import Item, Practice
from planner.records.set_up import NOTHING_WISHED, SetUp
from planner.setup.advice import NOTHING_CHOSEN
from planner.setup.facts import Facts, facts
from planner.setup.figures import figures
from planner.setup.judging import decide
from planner.setup.register import BY_ITEM
from planner.values.set_up import SetUpItem
from planner.values.sewing import Sewing


def sewing(plan: Plan, born_on: str, prepared: SetUp | None, practice: Practice | None) -> Sewing | None:
    """None where nobody prepared anything; where what was prepared is refused, the rules' own choice stands again."""
    if prepared is None and practice is None:
        return None
    on = prepared.on if prepared else plan.case.examination.examined_on
    wishes = prepared.wishes if prepared else NOTHING_WISHED
    known = facts(born_on, plan, on=on, wishes=wishes, figures=figures(practice))
    try:
        return _sewing(known, prepared, practice)
    except Refused as refused:
        made = _sewing(known, None, practice)
        return Sewing(suture=made.suture, needle=made.needle, refused=refused.faults[0].text)


def _sewing(known: Facts, prepared: SetUp | None, practice: Practice | None) -> Sewing:
    return Sewing(
        suture=_decided(Item.SUTURE, known, prepared, practice),
        needle=_decided(Item.NEEDLE, known, prepared, practice),
    )


def _decided(item: Item, known: Facts, prepared: SetUp | None, practice: Practice | None) -> SetUpItem:
    wanted = {each.item: each for each in prepared.overrides} if prepared else {}
    return decide(BY_ITEM[item], known, NOTHING_CHOSEN, practice=practice, override=wanted.get(item))
