"""The most that is conventionally done to a muscle: no dose goes beyond it unless a published source printed it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from planner.anatomy import Muscle
from planner.provenance import Mark, Provenance
from planner.values.option import Family, Operation

CONVENTIONAL = Provenance(
    mark=Mark.FROM_MEMORY, source="conventional maxima of standard teaching, parts of it published"
)


@dataclass(frozen=True)
class Maximum:
    """``usual_mm`` is the most that is usually done, ``widest_mm`` the most that is taught at all, ``why`` for whom."""

    usual_mm: float
    widest_mm: float
    why: str = ""


MAXIMA: Mapping[tuple[Muscle, Operation], Maximum] = MappingProxyType(
    {
        (Muscle.MR, Operation.RECESS): Maximum(6, 7, "in infantile esotropia"),
        (Muscle.MR, Operation.RESECT): Maximum(8, 8),
        (Muscle.LR, Operation.RECESS): Maximum(9, 10),
        (Muscle.LR, Operation.RESECT): Maximum(9, 10),
        (Muscle.SR, Operation.RECESS): Maximum(5, 8, "up to 10 mm in dissociated vertical deviation"),
        (Muscle.SR, Operation.RESECT): Maximum(5, 5),
        (Muscle.IR, Operation.RECESS): Maximum(5, 5),
        (Muscle.IR, Operation.RESECT): Maximum(5, 5),
    }
)

DISSOCIATED = Maximum(8, 10, "in dissociated vertical deviation")


def maximum_of(muscle: Muscle, operation: Operation, family: Family) -> Maximum | None:
    """The maximum of an operation; None where none is taught, as for the obliques."""
    if family is Family.DISSOCIATED and (muscle, operation) == (Muscle.SR, Operation.RECESS):
        return DISSOCIATED
    return MAXIMA.get((muscle, operation))
