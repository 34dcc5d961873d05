"""What was measured in clinic.

Signs: eso +, exo -; right hyper +, left hyper -. ``right`` and ``left`` of a gaze or a tilt are the patient's.
Only one reading is required: the primary position at distance (:func:`planner.findings.target` refuses without it).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, ClassVar

from planner.anatomy import Eye, Muscle
from planner.limits import AnyOf, IsoDate, Length, Prose, Unique, Within
from planner.records.diagnosis import Diagnosed, Validity
from planner.records.motility import Duction, ForcedDuction, HeadPosture, Version
from planner.records.technique import Condition, Method, Prisms


class Gaze(StrEnum):
    """Where the patient looks, or to which shoulder the head is tilted."""

    PRIMARY = "primary"
    UP = "up"
    DOWN = "down"
    RIGHT = "right"
    LEFT = "left"
    UP_RIGHT = "up_right"
    UP_LEFT = "up_left"
    DOWN_RIGHT = "down_right"
    DOWN_LEFT = "down_left"
    TILT_RIGHT = "tilt_right"
    TILT_LEFT = "tilt_left"

    @property
    def words(self) -> str:
        """The gaze as it stands in a sentence."""
        if self is Gaze.PRIMARY:
            return "in primary position"
        if self in (Gaze.TILT_RIGHT, Gaze.TILT_LEFT):
            return f"with the head tilted {self.removeprefix('tilt_')}"
        return f"in {self.replace('_', '-')} gaze"


class Range(StrEnum):
    """Fixation distance: ``distance`` 6 m or its optical equal, ``near`` 33 cm."""

    DISTANCE = "distance"
    NEAR = "near"


class Correction(StrEnum):
    """Whether the patient wore the spectacle or lens correction."""

    WITH = "with"
    WITHOUT = "without"


class FixingEye(StrEnum):
    """The eye the patient prefers to fix with."""

    RIGHT = "right"
    LEFT = "left"
    EITHER = "either"


class Acuity(StrEnum):
    """Distance visual acuity of one eye, as read from the chart, best first."""

    SIX_5 = "6/5"
    SIX_6 = "6/6"
    SIX_7_5 = "6/7.5"
    SIX_9 = "6/9"
    SIX_12 = "6/12"
    SIX_15 = "6/15"
    SIX_18 = "6/18"
    SIX_24 = "6/24"
    SIX_30 = "6/30"
    SIX_36 = "6/36"
    SIX_48 = "6/48"
    SIX_60 = "6/60"
    THREE_60 = "3/60"
    COUNTING_FINGERS = "counting fingers"
    HAND_MOVEMENTS = "hand movements"
    LIGHT_PERCEPTION = "light perception"
    NO_LIGHT_PERCEPTION = "no light perception"


class Constancy(StrEnum):
    """Whether the deviation is always there, comes and goes, or shows only when fusion is broken."""

    CONSTANT = "constant"
    INTERMITTENT = "intermittent"
    LATENT = "latent"


class PastOperation(StrEnum):
    """What was done to a muscle at an earlier operation."""

    RECESS = "recess"
    RESECT = "resect"
    OTHER = "other"
    UNKNOWN = "unknown"


@dataclass(frozen=True, kw_only=True)
class Reading:
    """One reading as it was taken; at least one of the two directions is given.

    ``technique`` null: the prisms as they are labelled. ``repeat`` numbers readings that agree in everything else.
    """

    RULES: ClassVar = (AnyOf(("horizontal_pd", "vertical_pd"), "a horizontal or a vertical figure, or both"),)

    gaze: Gaze
    range: Range
    correction: Correction
    horizontal_pd: Annotated[float, Within(-150, 150, "prism dioptres, eso +, exo -")] | None = None
    vertical_pd: Annotated[float, Within(-80, 80, "prism dioptres, right hyper +, left hyper -")] | None = None
    method: Method = Method.PRISM_COVER
    technique: Prisms | None = None
    condition: Condition = Condition.PLAIN
    repeat: Annotated[int, Within(1, 9)] = 1


@dataclass(frozen=True, kw_only=True)
class PreviousOperation:
    """A muscle that was operated before, as far as it is known."""

    eye: Eye
    muscle: Muscle
    operation: PastOperation
    mm: Annotated[float, Within(0, 20, "mm")] | None = None
    year: Annotated[int, Within(1900, 2200, "calendar year")] | None = None


ONE_READING = ("gaze", "range", "correction", "method", "condition", "repeat")
"""What tells two readings apart."""

Lens = Annotated[float, Within(-20, 20, "dioptres, mean power of the lens")]
Torsion = Annotated[float, Within(-40, 40, "degrees, excyclotorsion +, incyclotorsion -")]
Dissociated = Annotated[float, Within(0, 60, "prism dioptres")]
AxialLength = Annotated[float, Within(15, 40, "mm")]


@dataclass(frozen=True, kw_only=True)
class Examination:
    """Body of an ``examination`` record, schema 1.

    ``spectacles_*_d`` are the lenses worn in readings with correction. Torsion is by double Maddox rod:
    of each eye in primary position, and of both together in down-gaze. ``dvd_*_pd`` is the upward drift of the covered
    eye. ``conditions`` say what is known of what breaks the three-step test.
    """

    schema: int = 1
    examined_on: Annotated[str, IsoDate()]
    readings: Annotated[tuple[Reading, ...], Length(1, 120), Unique(ONE_READING)]
    fixing_eye: FixingEye | None = None
    acuity_right: Acuity | None = None
    acuity_left: Acuity | None = None
    versions: Annotated[tuple[Version, ...], Length(0, 12), Unique(("eye", "muscle"))] = ()
    previous_operations: Annotated[tuple[PreviousOperation, ...], Length(0, 40)] = ()
    note: Annotated[str, Prose(0, 2000)] = ""
    spectacles_right_d: Lens | None = None
    spectacles_left_d: Lens | None = None
    pupil_distance_mm: Annotated[float, Within(40, 80, "mm")] | None = None
    axial_length_right_mm: AxialLength | None = None
    axial_length_left_mm: AxialLength | None = None
    constancy: Constancy | None = None
    excyclotorsion_right_deg: Torsion | None = None
    excyclotorsion_left_deg: Torsion | None = None
    excyclotorsion_down_deg: Torsion | None = None
    dvd_right_pd: Dissociated | None = None
    dvd_left_pd: Dissociated | None = None
    head_posture: HeadPosture | None = None
    ductions: Annotated[tuple[Duction, ...], Length(0, 12), Unique(("eye", "muscle"))] = ()
    forced_ductions: Annotated[tuple[ForcedDuction, ...], Length(0, 12), Unique(("eye", "muscle"))] = ()
    conditions: Annotated[tuple[Validity, ...], Length(0, 7), Unique(("breaker",))] = ()
    diagnoses: Annotated[tuple[Diagnosed, ...], Length(0, 12), Unique(("diagnosis", "eye"))] = ()
