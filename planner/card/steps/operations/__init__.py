"""What each operation says: a module each, with ``sutures``, ``steps``, ``checks`` and ``pitfalls`` of a dose."""

from types import ModuleType

from planner.card.steps.operations import anteriorise, harada_ito, recess, resect, transpose, tuck, weaken
from planner.values.option import Operation

OPERATIONS: dict[Operation, ModuleType] = {
    Operation.RECESS: recess,
    Operation.RESECT: resect,
    Operation.WEAKEN: weaken,
    Operation.ANTERIORISE: anteriorise,
    Operation.TRANSPOSE: transpose,
    Operation.HARADA_ITO: harada_ito,
    Operation.TUCK: tuck,
}
