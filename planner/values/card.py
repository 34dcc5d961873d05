"""What the theatre reads: the same value is shown on screen and drawn on paper."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.values.option import Operation
from planner.values.statement import Notice
from planner.values.table_stamp import TableStamp


@dataclass(frozen=True, kw_only=True)
class CardLine:
    """One muscle on the card. ``surgeon_changed`` is shown with both figures.

    Figures are null where the operation has none. ``attachment_words`` then say what is done, and ``offset_words`` say
    where the tendon is moved to beside the operation; each is empty where there is nothing to say.
    """

    eye: Eye
    eye_words: str
    muscle: Muscle
    muscle_words: str
    operation: Operation
    operation_words: str
    mm: float | None
    table_mm: float | None
    surgeon_changed: bool
    limbus_mm: float | None
    insertion_mm: float | None
    attachment_words: str = ""
    offset_words: str = ""


@dataclass(frozen=True, kw_only=True)
class Card:
    """A signed plan as one page. ``eyes_words`` names the eye or eyes to be operated, for example ``BOTH EYES``.

    ``distances_words`` says what ``limbus_mm`` and ``insertion_mm`` are measured between, and whose figures they are.
    """

    full_name: str
    born_on: str
    hospital_number: str
    sex: str
    allergies: str
    eyes_words: str
    title: str
    lines: tuple[CardLine, ...]
    deviation_words: str
    expected_words: str
    notices: tuple[Notice, ...]
    plan_note: str
    table: TableStamp
    engine_version: str
    distances_words: str
    examined_on: str
    signer_name: str
    signed_at: str
    check_word: str
    disclaimer: str
