"""Two records of one operation: written on devices that had not heard of each other, and not yet settled by a person.

Nothing is merged. Where the records agree of a muscle, that is known; where they differ, both are said and a later plan
is told that what was done is not known.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from planner.anatomy import Eye, Muscle
from planner.card.words import date_words
from planner.figures import mm
from planner.operation.positions import Done, final_limbus_mm, final_mm, muscles_left
from planner.operation.works import place_words, work_words
from planner.provenance import Mark, Provenance
from planner.records.examination import PastOperation, PreviousOperation
from planner.records.operation import MovedMuscle, OperatedMuscle
from planner.values.operation import EarlierMuscle
from planner.values.statement import Level, Notice

Key = tuple[Eye, Muscle]
SEVERAL = Provenance(
    mark=Mark.HOUSE_RULE, source="records of two devices are never merged; a person settles which is right"
)


def notices(shown: Done, others: Sequence[Done]) -> Iterator[Notice]:
    """That the records are several, and of every muscle and matter what the others say otherwise."""
    if not others:
        return
    count = len(others) + 1
    text = (
        f"There are {count} records of this operation, and nobody has settled which is right. This is the one by "
        f"{shown.operation.surgeon_name} of {date_words(shown.operation.operated_on)}."
    )
    yield _notice("unsettled_records", text, records=float(count))
    for eye, muscle in _keys((shown, *others)):
        here, *there = (_told(done, (eye, muscle)) for done in (shown, *others))
        if set(there) != {here}:
            text = (
                f"{place_words(eye, muscle)}: in this record {here}; in another {' and '.join(dict.fromkeys(there))}."
            )
            yield _notice(f"unsettled-{eye}-{muscle.lower()}", text, eye=eye.value, muscle=muscle.value)
    wrong, *otherwise = (_complications(done) for done in (shown, *others))
    if set(otherwise) != {wrong}:
        text = f"Complications: in this record {wrong}; in another {' and '.join(dict.fromkeys(otherwise))}."
        yield _notice("unsettled_complications", text)


def settled_or_unknown(records: Sequence[Done]) -> Iterator[EarlierMuscle]:
    """The muscles as the records of one operation left them; of one on which they differ nothing but that is known."""
    left = [{(each.previous.eye, each.previous.muscle): each for each in muscles_left(done)} for done in records]
    for key in _keys(records):
        said = [each.get(key) for each in left]
        first = next((each for each in said if each is not None), None)
        if first is None:
            continue
        if all(each is not None and _same(each, first) for each in said):
            yield replace(first, text=f"{first.text} {len(records)} records of this operation say so.")
        else:
            yield _unknown(first, records, key)


def _same(one: EarlierMuscle, other: EarlierMuscle) -> bool:
    return (one.previous, one.limbus_mm) == (other.previous, other.limbus_mm)


def _unknown(first: EarlierMuscle, records: Sequence[Done], key: Key) -> EarlierMuscle:
    years = {done.operation.operated_on[:4] for done in records}
    told = " or ".join(dict.fromkeys(_told(done, key) for done in records))
    return EarlierMuscle(
        previous=PreviousOperation(
            eye=first.previous.eye,
            muscle=first.previous.muscle,
            operation=PastOperation.UNKNOWN,
            mm=None,
            year=int(years.pop()) if len(years) == 1 else None,
        ),
        operated_on=first.operated_on,
        limbus_mm=None,
        adjusted=first.adjusted,
        text=(
            f"{place_words(*key)}: {len(records)} records of this operation differ, and nobody has settled which is "
            f"right: {told}."
        ),
    )


def _keys(records: Sequence[Done]) -> tuple[Key, ...]:
    """Every muscle that any of the records names, in the order of the first that does."""
    return tuple(dict.fromkeys((each.eye, each.muscle) for done in records for each in done.operation.muscles))


def _told(done: Done, key: Key) -> str:
    muscle = next((each for each in done.operation.muscles if (each.eye, each.muscle) == key), None)
    if muscle is None or muscle.done is None:
        return "not operated"
    moved = {(each.eye, each.muscle): each for each in done.adjustment.moved} if done.adjustment else {}
    return _work(muscle, moved.get(key))


def _work(muscle: OperatedMuscle, moved: MovedMuscle | None) -> str:
    if muscle.done is None:
        return "not operated"
    in_the_end = replace(muscle.done, mm=final_mm(muscle.done, moved))
    limbus_mm = final_limbus_mm(muscle, moved)
    lies = "" if limbus_mm is None else f", {mm(limbus_mm)} from the limbus"
    adjusted = ", adjusted" if moved else ""
    return f"{work_words(in_the_end)}{lies}{adjusted}"


def _complications(done: Done) -> str:
    named = [
        f"{each.complication}{f', {place_words(each.eye, each.muscle).lower()}' if each.eye and each.muscle else ''}"
        for each in done.operation.complications
    ]
    return "; ".join(sorted(named)) or "none"


def _notice(code: str, text: str, **facts: str | float) -> Notice:
    return Notice(code=code, text=text, provenance=SEVERAL, facts=facts, level=Level.CAUTION)
