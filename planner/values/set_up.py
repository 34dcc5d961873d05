"""The set-up sheet: what theatre prepares for one operation, with the reason for each thing."""

from __future__ import annotations

from dataclasses import dataclass

from planner.provenance import Provenance
from planner.records.practice import Item
from planner.values.statement import Notice, Statement


@dataclass(frozen=True, kw_only=True)
class Possibility:
    """One way to do an item. ``refused`` is the stop that nobody passes, null where it may be chosen."""

    id: str
    words: str
    merit: Statement
    refused: Notice | None = None


@dataclass(frozen=True, kw_only=True)
class SetUpItem:
    """What is done about one item.

    ``choice`` is what stands: the surgeon's where ``override_reason`` is not empty, else ``suggested``, which is the
    clinic's own where ``clinics_own``. ``alternatives`` are all other ways, those that are refused last.
    ``practice_words`` is what the clinic wants said with it.
    """

    item: Item
    title: str
    choice: str
    choice_words: str
    suggested: str
    suggested_words: str
    override_reason: str
    clinics_own: bool
    practice_words: str
    alternatives: tuple[Possibility, ...]
    reasons: tuple[Statement, ...]
    would_change: tuple[Statement, ...]
    cautions: tuple[Notice, ...]
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class SetUpSheet:
    """The sheet of one operation.

    ``operation`` has a line per muscle. ``adjust_from`` is the earliest moment for adjusting after a block, empty if
    none. ``check_word`` is that of the plan, ``signed`` whether its signature was shown. ``practice_words`` names who
    decided the clinic's own practice and why, empty where common practice stands alone.
    """

    full_name: str
    born_on: str
    hospital_number: str
    allergies: str
    on: str
    age_years: int
    eyes_words: str
    title: str
    operation: tuple[str, ...]
    items: tuple[SetUpItem, ...]
    notices: tuple[Notice, ...]
    adjust_from: str
    check_word: str
    signed: bool
    practice_words: str
    engine_version: str
    disclaimer: str

    def item(self, item: Item) -> SetUpItem:
        """What is done about one item."""
        return next(each for each in self.items if each.item is item)
