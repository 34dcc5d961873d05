"""Where an operation on a certain muscle may go wrong, whatever the operation."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.card.steps.say import taught
from planner.values.option import Dose
from planner.values.statement import Statement

PITFALLS = {
    Muscle.MR: "No oblique holds it: a lost medial rectus slips far back. Keep hold of it until both ends are tied.",
    Muscle.LR: "The inferior oblique inserts close by: take care not to hook it with the muscle.",
    Muscle.SR: "The superior oblique tendon lies beneath and is bound to it: free it before the muscle is moved.",
    Muscle.IR: "Bound to the lower lid and the inferior oblique: free it well, or the lid moves with the muscle.",
    Muscle.SO: "Look at the tendon before it is cut or folded; hook it without the superior rectus.",
    Muscle.IO: "Take all of its fibres on the hook and see that none is missed; keep clear of the vortex vein.",
}


def pitfalls(dose: Dose) -> Iterator[Statement]:
    """What the muscle itself brings."""
    yield taught(f"muscle-{dose.muscle.lower()}", PITFALLS[dose.muscle])
