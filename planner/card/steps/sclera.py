"""Sewing into sclera."""

from __future__ import annotations

from planner.card.steps.say import printed
from planner.values.statement import Statement


def thin() -> Statement:
    """How thin it is where a recessed muscle goes, and how often it was pierced."""
    return printed(
        "thin_sclera",
        "Sclera is about 0.3 mm thin behind a rectus insertion: pass the needle flat and in sight all the way. "
        "Pierced in 0.13 % of muscles.",
        "survey of 554,000 muscles: 728 perforations",
    )
