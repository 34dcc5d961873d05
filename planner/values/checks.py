"""What the checks in theatre ask next, and how far they are."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.provenance import Provenance
from planner.records.check_item import Phase, TeamRole
from planner.records.theatre_check import Outcome


class Way(StrEnum):
    """How a step is answered: by choosing among answers, or by entering again what something else says."""

    ANSWER = "answer"
    ALLERGY = "allergy"
    WRISTBAND = "wristband"
    WRISTBAND_NUMBER = "wristband number"
    PAPER = "paper"
    CONSENT = "consent"
    MARK = "mark"


class Hand(StrEnum):
    """Who holds the device."""

    FIRST = "first"
    SECOND = "second"


class Effect(StrEnum):
    """What an answer does: go on, go on with words that say more, or stop."""

    ON = "on"
    TELL = "tell"
    STOP = "stop"


class Keys(StrEnum):
    """What is typed of a hospital number."""

    DIGITS = "digits"
    CHARACTERS = "characters"


@dataclass(frozen=True, kw_only=True)
class Answer:
    """One of the answers to a step; ``surgeon_may`` says that the surgeon may go on after it, with a reason."""

    value: str
    words: str
    effect: Effect = Effect.ON
    surgeon_may: bool = False


@dataclass(frozen=True, kw_only=True)
class Step:
    """One screen of a check: who is asked, what is read aloud, what is then entered and by whom."""

    id: str
    title: str
    role: TeamRole
    hand: Hand
    aloud: str
    way: Way = Way.ANSWER
    do: str = ""
    answers: tuple[Answer, ...] = ()
    keys: Keys = Keys.CHARACTERS


@dataclass(frozen=True, kw_only=True)
class Item:
    """One item of a phase and its steps."""

    id: str
    phase: Phase
    steps: tuple[Step, ...]
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class Stop:
    """Why a check cannot go on; ``differences`` are said one by one. ``step`` is empty when it is the card itself."""

    code: str
    step: str
    text: str
    differences: tuple[str, ...] = ()
    surgeon_may: bool = False


@dataclass(frozen=True, kw_only=True)
class Progress:
    """Where a check stands: item ``number`` of ``count`` in all three phases, the step that is asked, or the end.

    ``outcome`` is null while a step is asked. ``told`` is what must be known to everybody from here on.
    """

    phase: Phase
    number: int
    count: int
    step: Step | None
    provenance: Provenance | None
    stop: Stop | None
    told: tuple[str, ...]
    outcome: Outcome | None
