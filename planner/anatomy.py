"""Eyes, the six muscles of each, and where their insertions lie."""

from __future__ import annotations

from enum import StrEnum

from planner.provenance import Mark, Provenance


class Eye(StrEnum):
    """An eye of the patient, as the patient would name it."""

    RIGHT = "right"
    LEFT = "left"

    @property
    def other(self) -> Eye:
        """The fellow eye."""
        return Eye.LEFT if self is Eye.RIGHT else Eye.RIGHT


class Muscle(StrEnum):
    """An extraocular muscle, by the trade's abbreviation."""

    MR = "MR"
    LR = "LR"
    SR = "SR"
    IR = "IR"
    SO = "SO"
    IO = "IO"

    @property
    def words(self) -> str:
        """The name written out."""
        return MUSCLE_WORDS[self]

    @property
    def plural(self) -> str:
        """The name of the pair written out."""
        return f"{self.words.removesuffix('us')}i" if self.is_rectus else f"{self.words}s"

    @property
    def is_rectus(self) -> bool:
        """Whether the muscle carries anterior ciliary vessels that an operation on it cuts."""
        return self not in (Muscle.SO, Muscle.IO)


MUSCLE_WORDS = {
    Muscle.MR: "medial rectus",
    Muscle.LR: "lateral rectus",
    Muscle.SR: "superior rectus",
    Muscle.IR: "inferior rectus",
    Muscle.SO: "superior oblique",
    Muscle.IO: "inferior oblique",
}

INSERTION_FROM_LIMBUS_MM = {Muscle.MR: 5.5, Muscle.IR: 6.5, Muscle.LR: 6.9, Muscle.SR: 7.7}
"""Classic insertion distances, mm of arc from the limbus to the middle of the insertion."""

INSERTION_PROVENANCE = Provenance(
    mark=Mark.PUBLISHED, source="Fuchs 1884, the classic insertion distances quoted by every text"
)
