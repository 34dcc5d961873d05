"""An operation that the engine offers: which muscles, how much, and what is expected of it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Eye, Muscle
from planner.figures import mm
from planner.values.prediction import Prediction
from planner.values.statement import Notice, Statement
from planner.values.table_stamp import TableStamp


class Operation(StrEnum):
    """What is done to a muscle."""

    RECESS = "recess"
    RESECT = "resect"
    WEAKEN = "weaken"
    ANTERIORISE = "anteriorise"
    TRANSPOSE = "transpose"
    HARADA_ITO = "harada-ito"
    TUCK = "tuck"

    @property
    def noun(self) -> str:
        """The operation as a noun."""
        return NOUNS[self]

    @property
    def words(self) -> str:
        """The operation as it stands beside a muscle's name."""
        return "Harada-Ito" if self is Operation.HARADA_ITO else self.value

    @property
    def verb(self) -> str:
        """The operation before a muscle's name, ``recess`` the medial rectus."""
        return "do a Harada-Ito on" if self is Operation.HARADA_ITO else self.value


NOUNS = {
    Operation.RECESS: "recession",
    Operation.RESECT: "resection",
    Operation.WEAKEN: "weakening",
    Operation.ANTERIORISE: "anterior transposition",
    Operation.TRANSPOSE: "transposition",
    Operation.HARADA_ITO: "Harada-Ito",
    Operation.TUCK: "tuck",
}


class Family(StrEnum):
    """How the work is shared between muscles and eyes, or what kind of work it is."""

    BOTH_EYES = "both eyes"
    ONE_EYE = "one eye"
    ONE_MUSCLE = "one muscle"
    THREE_MUSCLES = "three muscles"
    FOUR_MUSCLES = "four muscles"
    VERTICAL_RECTI = "vertical recti"
    OBLIQUES = "obliques"
    DISSOCIATED = "dissociated vertical deviation"
    TORSION = "torsion"
    OFFSET = "tendon offset"
    COMBINED = "combined"


class Answers(StrEnum):
    """The kind of deviation that an option is for."""

    HORIZONTAL = "horizontal"
    VERTICAL = "vertical"
    DISSOCIATED = "dissociated"
    TORSION = "torsion"
    PATTERN = "pattern"


class Unit(StrEnum):
    """What an expected effect is counted in."""

    PRISM_DIOPTRES = "prism dioptres"
    DEGREES = "degrees"


@dataclass(frozen=True, kw_only=True)
class Expected:
    """What an option is expected to do to one kind of deviation; null where no figure is published.

    Vertical figures are right hyper +, torsion excyclo +. A pattern is the deviation (eso +) in down-gaze less that in
    up-gaze: V +, A -. A dissociated deviation is the upward drift of ``eye``. ``spread`` is the standard deviation of
    the correction; ``statement`` says it all in a sentence with its source.
    """

    answers: Answers
    unit: Unit
    before: float
    correction: float | None
    residual: float | None
    spread: float | None
    statement: Statement
    eye: Eye | None = None


class OffsetDirection(StrEnum):
    """Where a tendon is moved to across its pull."""

    UP = "up"
    DOWN = "down"


class OffsetWidth(StrEnum):
    """By how much a tendon is moved across its pull, in widths of the tendon."""

    HALF = "half tendon"
    FULL = "full tendon"


@dataclass(frozen=True, kw_only=True)
class Offset:
    """A tendon moved up or down along the limbus by a part of its width, which is ``mm`` on a usual eye."""

    direction: OffsetDirection
    width: OffsetWidth
    mm: float

    @property
    def words(self) -> str:
        """``up by half a tendon width (5 mm)``."""
        width = "half a" if self.width is OffsetWidth.HALF else "a full"
        return f"{self.direction} by {width} tendon width ({mm(self.mm)})"


@dataclass(frozen=True, kw_only=True)
class Dose:
    """One muscle of an option.

    ``mm`` is what the option does; ``table_mm`` is what the table says and stays beside a changed ``mm``.
    ``limbus_mm`` is the arc from the limbus to the new attachment. ``steps`` explain ``table_mm`` from reading to
    rounding. ``adjustment_mm`` is what the engine adds to the table's figure, so ``changed`` means that ``mm`` is not
    ``table_mm + adjustment_mm``. ``caliper_mm`` is ``limbus_mm`` as a straight caliper spans it on this eye.
    ``room_mm`` is how much more of the same the muscle could take later, null where that cannot be told.
    ``adjustable``: an adjustable suture can be put on it. Figures are null where the operation has none:
    ``attachment_words`` then say what is done. ``offset`` is beside the operation itself.
    """

    eye: Eye
    muscle: Muscle
    operation: Operation
    mm: float | None
    table_mm: float | None
    changed: bool
    insertion_mm: float | None
    limbus_mm: float | None
    steps: tuple[Statement, ...]
    adjustment_mm: float = 0.0
    caliper_mm: float | None = None
    room_mm: float | None = None
    adjustable: bool = False
    offset: Offset | None = None
    attachment_words: str = ""

    @property
    def figure_mm(self) -> float:
        """``mm`` to count with: 0 where the operation has no figure."""
        return 0.0 if self.mm is None else self.mm


@dataclass(frozen=True, kw_only=True)
class Option:
    """One operation for the target deviation.

    ``id`` is stable, for example ``recess-both-mr`` or ``recess-mr-resect-lr-left``.
    ``expected_correction_pd`` and ``expected_residual_pd`` are of the horizontal deviation and carry its sign (eso +),
    to one decimal: the residual is the deviation less the correction, so for 40 Δ eso a correction of +37.5 leaves
    +2.5. ``answers`` is what the option is for; what it does to other deviations than the horizontal is ``expected``.
    ``prediction`` is where the eyes are expected horizontally, null without horizontal doses.
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
    answers: Answers = Answers.HORIZONTAL
    expected: tuple[Expected, ...] = ()
    prediction: Prediction | None = None
