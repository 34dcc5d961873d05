"""What the theatre reads: the same value is shown on screen and drawn on paper."""

from __future__ import annotations

from dataclasses import dataclass

from planner.anatomy import Eye, Muscle
from planner.values.alert import Alert
from planner.values.option import Operation
from planner.values.picture import Picture
from planner.values.statement import Notice, Statement
from planner.values.table_stamp import TableStamp


@dataclass(frozen=True, kw_only=True)
class CardLine:
    """One muscle on the card. ``surgeon_changed`` is shown with both figures.

    Figures are null where the operation has none. ``attachment_words`` then say what is done, and ``offset_words`` say
    where the tendon is moved to beside the operation; each is empty where there is nothing to say.
    ``caliper_mm`` is ``limbus_mm`` as a straight caliper spans it. ``sutures``, ``steps``, ``checks`` and ``pitfalls``
    say what is sewn with, what is special, what to check before and after, and where it may go wrong. ``ruler`` draws
    the distances from the limbus.
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
    caliper_mm: float | None = None
    sutures: tuple[Statement, ...] = ()
    steps: tuple[Statement, ...] = ()
    checks: tuple[Statement, ...] = ()
    pitfalls: tuple[Statement, ...] = ()
    ruler: Picture | None = None


@dataclass(frozen=True, kw_only=True)
class Card:
    """A signed plan as one page. ``eyes_words`` names the eye or eyes to be operated, for example ``BOTH EYES``.

    ``code`` opens the same card elsewhere (:mod:`planner.card.code`); ``no_code_words`` say why a card has none.
    ``alerts`` are what the team must know before it begins. ``pictures`` show both eyes in each view.
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
    alerts: tuple[Alert, ...] = ()
    pictures: tuple[Picture, ...] = ()
    code: str = ""
    no_code_words: str = ""
