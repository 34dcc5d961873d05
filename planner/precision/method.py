"""How a deviation was measured."""

from __future__ import annotations

from enum import StrEnum


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
