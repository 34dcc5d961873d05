"""An operation that the engine offers: which muscles, how much, and what is expected of it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Eye, Muscle
from planner.values.statement import Notice, Statement
from planner.values.table_stamp import TableStamp


class Operation(StrEnum):
    """What is done to a muscle."""

    RECESS = "recess"
    RESECT = "resect"

    @property
    def noun(self) -> str:
        """The operation as a noun."""
        return "recession" if self is Operation.RECESS else "resection"


class Family(StrEnum):
    """How the work is shared between muscles and eyes."""

    BOTH_EYES = "both eyes"
    ONE_EYE = "one eye"
    ONE_MUSCLE = "one muscle"
    THREE_MUSCLES = "three muscles"
    FOUR_MUSCLES = "four muscles"


@dataclass(frozen=True, kw_only=True)
class Dose:
    """One muscle of an option.

    ``mm`` is what the option does; ``table_mm`` is what the table says and stays beside a changed ``mm``.
    ``limbus_mm`` is the arc from the limbus to the new attachment. ``steps`` explain ``table_mm`` from reading to
    rounding. ``adjustment_mm`` is what the engine adds to the table's figure, so ``changed`` means that ``mm`` is not
    ``table_mm + adjustment_mm``. ``caliper_mm`` is ``limbus_mm`` as a straight caliper spans it on this eye.
    ``left_mm`` is how much more of the same the muscle could take later, null where that cannot be told.
    ``adjustable``: an adjustable suture can be put on it.
    """

    eye: Eye
    muscle: Muscle
    operation: Operation
    mm: float
    table_mm: float
    changed: bool
    insertion_mm: float
    limbus_mm: float
    steps: tuple[Statement, ...]
    adjustment_mm: float = 0.0
    caliper_mm: float | None = None
    left_mm: float | None = None
    adjustable: bool = False


@dataclass(frozen=True, kw_only=True)
class Option:
    """One operation for the target deviation.

    ``id`` is stable, for example ``recess-both-mr`` or ``recess-mr-resect-lr-left``.
    ``expected_correction_pd`` and ``expected_residual_pd`` carry the sign of the deviation scale (eso +), to one
    decimal: the residual is the deviation less the correction, so for 40 Δ eso a correction of +37.5 leaves +2.5.
    ``table`` is the source of the doses where that is not the case's table. No two ``notices`` have the same code. An
    option with a stop among them cannot be signed; where no dose exists ``doses`` is empty and nothing is corrected.
    """

    id: str
    family: Family
    title: str
    doses: tuple[Dose, ...]
    expected_correction_pd: float
    expected_residual_pd: float
    reasons_for: tuple[Statement, ...]
    reasons_against: tuple[Statement, ...]
    notices: tuple[Notice, ...]
    table: TableStamp | None = None
