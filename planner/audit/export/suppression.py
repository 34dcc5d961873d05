"""Small cells: what somebody may know beforehand is hidden wherever fewer than five rows share it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Final

SMALLEST: Final = 5
HIDDEN: Final = "*"


def suppressed(rows: Sequence[Mapping[str, str]], hiding: Sequence[str]) -> tuple[tuple[Mapping[str, str], ...], int]:
    """The rows, each with as few of ``hiding`` hidden as need be, in that order; and how many had to be left out.

    A row whose combination is shared by fewer than :data:`SMALLEST` loses its next column and is looked at again among
    those that lost the same. Those that are still too few with all columns hidden are left out and counted.
    """
    kept: list[Mapping[str, str]] = []
    open_ = list(rows)
    for hidden in range(len(hiding) + 1):
        masked = [{**each, **dict.fromkeys(hiding[:hidden], HIDDEN)} for each in open_]
        shared = Counter(_seen(each, hiding) for each in masked)
        kept += [each for each in masked if shared[_seen(each, hiding)] >= SMALLEST]
        open_ = [each for each, mask in zip(open_, masked, strict=True) if shared[_seen(mask, hiding)] < SMALLEST]
    return tuple(kept), len(open_)


def _seen(row: Mapping[str, str], hiding: Sequence[str]) -> tuple[str, ...]:
    return tuple(row[name] for name in hiding)
