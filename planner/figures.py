"""How figures are written in sentences."""

from __future__ import annotations


def pd(figure: float) -> str:
    """Prism dioptres without a sign, to one decimal where it says something: ``40 Δ``, ``37.5 Δ``."""
    return f"{_short(abs(figure), 1)} Δ"


def mm(figure: float) -> str:
    """Millimetres, to two decimals where they say something: ``5.5 mm``, ``4.67 mm``, ``6 mm``."""
    return f"{_short(figure, 2)} mm"


def inside(words: str) -> str:
    """A sentence's beginning as it stands inside another: ``Esodeviation 40 Δ`` as ``esodeviation 40 Δ``."""
    return f"{words[:1].lower()}{words[1:]}"


def _short(figure: float, decimals: int) -> str:
    return f"{figure:.{decimals}f}".rstrip("0").rstrip(".")
