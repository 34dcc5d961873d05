"""What muscles are sewn to sclera with, as the set-up sheet of the operation decides it."""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.set_up import SetUpItem


@dataclass(frozen=True, kw_only=True)
class Sewing:
    """The sheet's own items; ``refused`` is why what was prepared does not stand, empty where it does."""

    suture: SetUpItem
    needle: SetUpItem
    refused: str = ""
