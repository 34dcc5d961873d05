"""Followed operations as ``results`` and ``calibrate`` are asked with them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner import followup
from planner.calibration.admission import Window
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.exchange.notebook import Carried, carried_outcomes
from planner.followup import Reported
from planner.limits import Length, Unique

USUAL = Window()


@dataclass(frozen=True, kw_only=True)
class Question:
    """Operations, notebooks of older cases, and the follow-up that counts."""

    operations: Annotated[tuple[Reported, ...], Length(0, 500), Unique(("id",))] = ()
    notebooks: Annotated[tuple[Carried, ...], Length(0, 40), Unique(("id",))] = ()
    window: Window = USUAL


def ask(fields: Fields) -> object:
    """``[Outcome]``, one for each operation in the order given, then one for each case of each notebook."""
    asked = read(Question, fields)
    done = [followup.outcome(each, asked.window) for each in asked.operations]
    carried = [told for each in asked.notebooks for told in carried_outcomes(each, asked.window)]
    return [write(each) for each in (*done, *carried)]
