"""A muscle and a complication as they stand on the note."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye
from planner.card.words import eye_words
from planner.figures import mm
from planner.operation.positions import final_limbus_mm, final_mm
from planner.operation.works import place_words, work_words
from planner.records.operation import Complicated, MovedMuscle, MuscleState, OperatedMuscle
from planner.values.operation import NoteComplication, NoteLine

SCARRING = ("no scarring", "slight scarring", "marked scarring", "dense scarring")


def line(muscle: OperatedMuscle, moved: MovedMuscle | None, *, differs: bool) -> NoteLine:
    """One muscle, planned and done side by side."""
    return NoteLine(
        eye_words=eye_words({muscle.eye}),
        muscle_words=muscle.muscle.words,
        planned_words=work_words(muscle.planned) if muscle.planned else "not planned",
        done_words=work_words(muscle.done) if muscle.done else "not operated",
        differs=differs,
        reason=muscle.reason,
        found_words=", ".join(_found(muscle)),
        material_words=", ".join(_material(muscle)),
        adjusted_words=_adjusted(muscle, moved),
    )


def complication(each: Complicated) -> NoteComplication:
    """What went wrong, where, and what was done."""
    where = ""
    if each.eye and each.muscle:
        where = f"{place_words(each.eye, each.muscle)}: "
    elif each.eye:
        where = f"{_eye(each.eye)}: "
    return NoteComplication(words=f"{where}{each.complication}", note=each.note, answer=each.answer)


def _eye(eye: Eye) -> str:
    return f"{eye.capitalize()} eye"


def _found(muscle: OperatedMuscle) -> Iterator[str]:
    if muscle.state is not MuscleState.IN_PLACE:
        yield f"found {muscle.state}"
    if muscle.insertion_mm is not None:
        yield f"attached {mm(muscle.insertion_mm)} from the limbus before"
    if muscle.limbus_mm is not None:
        yield f"{mm(muscle.limbus_mm)} after"
    if muscle.duction_before:
        yield f"forced duction {muscle.duction_before} before"
    if muscle.duction_after:
        yield f"forced duction {muscle.duction_after} after"
    if muscle.scarring is not None:
        yield SCARRING[muscle.scarring]


def _material(muscle: OperatedMuscle) -> Iterator[str]:
    if muscle.suture:
        yield f"{muscle.gauge + ' ' if muscle.gauge else ''}{muscle.suture}"
    elif muscle.gauge:
        yield f"suture {muscle.gauge}"
    if muscle.needle:
        yield f"{muscle.needle} needle"
    if muscle.adjustable:
        yield "adjustable"


def _adjusted(muscle: OperatedMuscle, moved: MovedMuscle | None) -> str:
    if moved is None or muscle.done is None:
        return ""
    now = final_mm(muscle.done, moved)
    limbus_mm = final_limbus_mm(muscle, moved)
    ends = f"; {muscle.done.operation.noun} of {mm(now)} in the end" if now is not None else ""
    lies = f", {mm(limbus_mm)} from the limbus" if limbus_mm is not None else ""
    return f"{moved.way}ed by {mm(moved.mm)} when adjusted{ends}{lies}"
