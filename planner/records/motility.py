"""How the eyes move and how the head is held."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, ClassVar

from planner.anatomy import Eye, Muscle
from planner.limits import AnyOf, Requires, Within


class Side(StrEnum):
    """A side of the patient."""

    RIGHT = "right"
    LEFT = "left"


class Chin(StrEnum):
    """How the chin is held."""

    UP = "up"
    DOWN = "down"


class Pull(StrEnum):
    """What a forced duction meets."""

    FREE = "free"
    RESTRICTED = "restricted"


@dataclass(frozen=True, kw_only=True)
class Version:
    """How far a muscle over- (+) or underacts (-) in its field of action, in four steps."""

    eye: Eye
    muscle: Muscle
    grade: Annotated[int, Within(-4, 4, "steps, overaction +")]


@dataclass(frozen=True, kw_only=True)
class Duction:
    """How far an eye, the other covered, falls short in the field of a muscle: 0 full, -4 not past the middle."""

    eye: Eye
    muscle: Muscle
    grade: Annotated[int, Within(-4, 0, "steps, limitation -")]


@dataclass(frozen=True, kw_only=True)
class ForcedDuction:
    """What moving an eye by hand into the field of ``muscle`` meets; a tight antagonist restricts it there."""

    eye: Eye
    muscle: Muscle
    result: Pull


@dataclass(frozen=True, kw_only=True)
class HeadPosture:
    """How the head is held by habit: face turned, head tilted to a shoulder, chin up or down."""

    RULES: ClassVar = (
        AnyOf(("turn", "tilt", "chin"), "a turn, a tilt or a chin posture"),
        Requires("turn_deg", "turn", "the side to which the face is turned"),
        Requires("tilt_deg", "tilt", "the side to which the head is tilted"),
        Requires("chin_deg", "chin", "whether the chin is up or down"),
    )

    turn: Side | None = None
    turn_deg: Annotated[float, Within(0, 60, "degrees")] | None = None
    tilt: Side | None = None
    tilt_deg: Annotated[float, Within(0, 60, "degrees")] | None = None
    chin: Chin | None = None
    chin_deg: Annotated[float, Within(0, 60, "degrees")] | None = None
