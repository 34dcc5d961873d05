"""A question that a clinic adds to the checks in theatre."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import Length


class Phase(StrEnum):
    """The three pauses of an operation."""

    SIGN_IN = "sign in"
    TIME_OUT = "time out"
    SIGN_OUT = "sign out"


class TeamRole(StrEnum):
    """What somebody is in theatre; an account's role in the clinic is another matter."""

    NURSE = "nurse"
    ANAESTHETIST = "anaesthetist"
    SURGEON = "surgeon"


@dataclass(frozen=True, kw_only=True)
class CheckItem:
    """Body of a ``check_item`` record, schema 1: asked at the end of its phase.

    ``aloud`` is read out, ``goes_on`` and ``stops`` are the two answers to it, in the clinic's own words.
    """

    schema: int = 1
    phase: Phase
    role: TeamRole
    title: Annotated[str, Length(3, 60)]
    aloud: Annotated[str, Length(3, 200)]
    goes_on: Annotated[str, Length(2, 60)]
    stops: Annotated[str, Length(2, 60)]
