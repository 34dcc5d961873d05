"""What the calibration would have said of each past case, had it learned from all the others."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, sqrt

from planner.calibration.admission import PastCase
from planner.calibration.posterior import counted, within_bounds
from planner.calibration.prior import Prior
from planner.records.plan import RecordId


@dataclass(frozen=True, kw_only=True)
class Told:
    """One case, Δ: what was achieved, what the table promised, and what the other cases' effect makes of that."""

    id: RecordId
    achieved_pd: float
    table_pd: float
    own_pd: float


@dataclass(frozen=True, kw_only=True)
class Past:
    """Every case told without itself, and the root mean square of what each way missed, null without cases."""

    told: tuple[Told, ...]
    table_missed_pd: float | None
    own_missed_pd: float | None


def told_without_itself(before: Prior, cases: Sequence[PastCase]) -> Past:
    """Leave one out."""
    taken = counted(before, cases)
    weight = before.weight + fsum(each.weight for each in taken)
    everything = before.weight * before.mean + fsum(each.weight * each.ratio for each in taken)
    told = tuple(
        Told(
            id=case.id,
            achieved_pd=case.achieved_pd,
            table_pd=case.promised_pd,
            own_pd=case.promised_pd * within_bounds((everything - own.weight * own.ratio) / (weight - own.weight)),
        )
        for case, own in zip(cases, taken, strict=True)
    )
    return Past(
        told=told,
        table_missed_pd=_missed([each.achieved_pd - each.table_pd for each in told]),
        own_missed_pd=_missed([each.achieved_pd - each.own_pd for each in told]),
    )


def _missed(differences: Sequence[float]) -> float | None:
    return sqrt(fsum(each**2 for each in differences) / len(differences)) if differences else None
