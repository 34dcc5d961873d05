"""How a deviation was measured: the method, the prisms and the state of the eyes."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import Within


class Method(StrEnum):
    """Ways to measure, most exact first."""

    PRISM_COVER = "prism cover"
    KRIMSKY = "prism reflex"
    HIRSCHBERG = "light reflex"

    @property
    def words(self) -> str:
        """The method written out."""
        return METHOD_WORDS[self]

    @property
    def rank(self) -> int:
        """0 for the most exact method."""
        return tuple(Method).index(self)


METHOD_WORDS = {
    Method.PRISM_COVER: "prism and alternate cover test",
    Method.KRIMSKY: "prism reflex test",
    Method.HIRSCHBERG: "light reflex test",
}


class Condition(StrEnum):
    """What was done before or during the reading. Patched: one eye for 30 to 60 minutes, measured before it is used."""

    PLAIN = "plain"
    AFTER_PATCHING = "after patching"
    THROUGH_PLUS_3 = "through +3.00"
    THROUGH_MINUS_3 = "through -3.00"
    PRISM_ADAPTED = "prism adapted"


class Material(StrEnum):
    """What the prism is made of; this decides the position it is labelled for."""

    GLASS = "glass"
    ACRYLIC = "acrylic"


class Held(StrEnum):
    """How the prism is held before the eye."""

    FRONTAL = "frontal"
    PRENTICE = "prentice"
    MINIMUM_DEVIATION = "minimum deviation"

    @property
    def words(self) -> str:
        """The position written out."""
        return HELD_WORDS[self]


HELD_WORDS = {
    Held.FRONTAL: "rear face in the frontal plane",
    Held.PRENTICE: "rear face square to the line of sight",
    Held.MINIMUM_DEVIATION: "turned to minimum deviation",
}


class Arrangement(StrEnum):
    """One prism, or two that share the reading."""

    ONE = "one"
    SPLIT = "split"
    STACKED = "stacked"

    @property
    def words(self) -> str:
        """The arrangement written out."""
        return ARRANGEMENT_WORDS[self]


ARRANGEMENT_WORDS = {
    Arrangement.ONE: "one prism",
    Arrangement.SPLIT: "one prism before each eye",
    Arrangement.STACKED: "two prisms stacked before one eye",
}


@dataclass(frozen=True, kw_only=True)
class Prisms:
    """The prisms of one reading and how they were held.

    Where two share one direction of the reading, its figure is the plain sum of both labels, and
    ``horizontal_second_pd`` or ``vertical_second_pd`` is the label of the second; null where there was one prism.
    """

    material: Material = Material.ACRYLIC
    held: Held = Held.FRONTAL
    arrangement: Arrangement = Arrangement.ONE
    horizontal_second_pd: Annotated[float, Within(0, 100, "prism dioptres")] | None = None
    vertical_second_pd: Annotated[float, Within(0, 100, "prism dioptres")] | None = None
    prism_from_cornea_mm: Annotated[float, Within(0, 150, "mm")] | None = None
