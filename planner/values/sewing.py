"""What muscles are sewn to sclera with, as the set-up sheet of the operation decides it."""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.option import Operation
from planner.values.set_up import SetUpItem

TO_SCLERA = (Operation.RECESS, Operation.RESECT, Operation.ANTERIORISE, Operation.TRANSPOSE)
"""Operations whose suture the sheet decides; a fold, a split tendon and a cut one keep their own."""

STAYS = (Operation.TUCK, Operation.HARADA_ITO)
"""Operations whose suture must stay, whatever the sheet says of sclera (common practice)."""


@dataclass(frozen=True, kw_only=True)
class Sewing:
    """The sheet's own items; ``refused`` is why what was prepared does not stand, empty where it does."""

    suture: SetUpItem
    needle: SetUpItem
    refused: str = ""
