"""From the table's figure to the ruler: what is added, what the surgeon set, and where the muscle ends up."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.dosing import place
from planner.dosing.addition import Addition
from planner.dosing.place import Place
from planner.dosing.recipe import Move
from planner.figures import mm
from planner.provenance import Mark, Provenance
from planner.thresholds import exceeds, same
from planner.values.option import Dose, Operation
from planner.values.statement import Statement

SURGEON = Provenance(mark=Mark.HOUSE_RULE, source="the surgeon's figure counts; the table's stays beside it")
HELD = Provenance(mark=Mark.HOUSE_RULE, source="an addition never takes a dose beyond the widest maximum")
SUM = Provenance(mark=Mark.COMPUTED, source="the table's figure and what is added to it")


@dataclass(frozen=True, kw_only=True)
class Setting:
    """What a table's figure meets: an addition, the most that may be done, the surgeon's own figure, and this muscle.

    ``set_mm`` is None where nothing was set; ``spent_mm`` is what the same operation did to the muscle before, None
    where that is not known.
    """

    table_mm: float
    addition: Addition | None
    widest_mm: float
    set_mm: float | None
    spent_mm: float | None
    place: Place

    @property
    def added_mm(self) -> float:
        """What is added: no more than the widest maximum has room for."""
        if self.addition is None:
            return 0.0
        return max(0.0, min(self.addition.mm, self.widest_mm - self.table_mm))

    @property
    def advised_mm(self) -> float:
        """The table's figure and what is added to it."""
        return self.table_mm + self.added_mm

    @property
    def is_changed(self) -> bool:
        """Whether the surgeon set something else."""
        return self.set_mm is not None and not same(self.set_mm, self.advised_mm)

    @property
    def mm(self) -> float:
        """What is to be done."""
        return self.set_mm if self.set_mm is not None and self.is_changed else self.advised_mm

    @property
    def counted_mm(self) -> float:
        """``mm`` without what was added for another reason than the deviation, of which the column knows nothing."""
        return self.mm - min(max(self.mm - self.table_mm, 0.0), self.added_mm)

    @property
    def room_mm(self) -> float | None:
        """How much more of the same the muscle could take later."""
        if self.spent_mm is None:
            return None
        return max(0.0, round(self.widest_mm - self.spent_mm - self.mm, 2))


def dose(move: Move, setting: Setting, steps: tuple[Statement, ...]) -> Dose:
    """What is to be done to one muscle; ``steps`` explain the table's figure."""
    where = place.put(setting.place, move.operation, setting.mm)
    return Dose(
        eye=move.eye,
        muscle=move.muscle,
        operation=move.operation,
        mm=setting.mm,
        table_mm=setting.table_mm,
        changed=setting.is_changed,
        insertion_mm=setting.place.attached_mm,
        limbus_mm=where.limbus_mm,
        steps=(*steps, *_steps(setting), *where.steps),
        adjustment_mm=setting.added_mm,
        caliper_mm=where.caliper_mm,
        room_mm=setting.room_mm,
        adjustable=move.operation is Operation.RECESS,
        attachment_words=where.words,
    )


def _steps(setting: Setting) -> Iterator[Statement]:
    if setting.addition:
        yield setting.addition.reason
        if exceeds(setting.addition.mm, setting.added_mm):
            yield _held(setting, setting.addition)
        if setting.added_mm:
            yield _sum(setting)
    if setting.is_changed:
        yield _changed(setting)


def _held(setting: Setting, addition: Addition) -> Statement:
    return Statement(
        code="held_at_maximum",
        text=f"{mm(setting.widest_mm)} is the widest maximum: {mm(setting.added_mm)} of it is added.",
        provenance=HELD,
        facts={"wanted_mm": addition.mm, "added_mm": setting.added_mm, "widest_mm": setting.widest_mm},
    )


def _sum(setting: Setting) -> Statement:
    return Statement(
        code="adjusted",
        text=f"{mm(setting.table_mm)} by the table and {mm(setting.added_mm)} more: {mm(setting.advised_mm)}.",
        provenance=SUM,
        facts={"table_mm": setting.table_mm, "added_mm": setting.added_mm, "mm": setting.advised_mm},
    )


def _changed(setting: Setting) -> Statement:
    more = f" and {mm(setting.added_mm)} more" if setting.added_mm else ""
    return Statement(
        code="changed",
        text=f"The surgeon set {mm(setting.mm)}; the table says {mm(setting.table_mm)}{more}.",
        provenance=SURGEON,
        facts={"table_mm": setting.table_mm, "mm": setting.mm},
    )
