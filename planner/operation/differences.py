"""What was done, muscle by muscle, against what was planned."""

from __future__ import annotations

from planner.operation.works import a_work, where, work_words
from planner.records.operation import MuscleWork, OperatedMuscle
from planner.thresholds import same
from planner.values.operation import Difference

AS_PLANNED = "as_planned"


def difference(muscle: OperatedMuscle) -> Difference:
    """How one muscle differs; a reason is needed wherever it does."""
    code, said = _compared(muscle.planned, muscle.done)
    return Difference(
        code=code,
        eye=muscle.eye,
        muscle=muscle.muscle,
        text=f"{where(muscle)}: {said}.",
        needs_reason=code != AS_PLANNED,
    )


def _compared(planned: MuscleWork | None, done: MuscleWork | None) -> tuple[str, str]:
    if done is None:
        return "left_out", f"not operated; planned was {a_work(planned)}" if planned else "not operated"
    if planned is None:
        return "added", f"{work_words(done)}, not in the plan"
    if done.operation is not planned.operation:
        return "other_operation", f"{work_words(done)}; planned was {a_work(planned)}"
    if not _same_figure(planned.mm, done.mm):
        return "other_mm", f"{work_words(done)}; planned was {a_work(planned)}"
    if done.offset is not planned.offset:
        return "other_tendon", f"{work_words(done)}; planned was {a_work(planned)}"
    return AS_PLANNED, f"{work_words(done)}, as planned"


def _same_figure(planned_mm: float | None, done_mm: float | None) -> bool:
    if planned_mm is None or done_mm is None:
        return planned_mm is done_mm
    return same(planned_mm, done_mm)
