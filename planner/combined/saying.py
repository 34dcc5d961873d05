"""What must be said about a combination.

Rules about one muscle say of a dose what they said of it in its part; rules about eyes and vessels are asked again for
the whole. What a part left alone and another answers is no longer said.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner import rules
from planner.additions.judging import HORIZONTAL_NOT_ANSWERED, as_draft
from planner.additions.patterns.collapse import ALONE
from planner.combined.doses import United
from planner.dosing.draft import Draft
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.option import Answers, Dose, Family, Operation, Option
from planner.values.statement import Level, Notice

ONE_SITTING = Provenance(mark=Mark.HOUSE_RULE, source="each muscle is operated once at a sitting")
SEVERAL = Provenance(mark=Mark.HOUSE_RULE, source="parts that answer the same deviation add up")

ANSWERED_BY = {
    HORIZONTAL_NOT_ANSWERED: Answers.HORIZONTAL,
    "vertical_not_answered": Answers.VERTICAL,
    "vertical_elsewhere_not_answered": Answers.VERTICAL,
    "pattern_not_answered": Answers.PATTERN,
}


def notices(situation: Situation, parts: Sequence[Option], united: United) -> tuple[Notice, ...]:
    """Everything, each code once and the gravest of it, stops first."""
    answered = {part.answers for part in parts} | {each.answers for part in parts for each in part.expected}
    found = [
        *_twice(united),
        *rules.of_whole(situation, _draft_of(situation, united.doses)),
        *(notice for part in parts for notice in _of_part(situation, part, answered) if _holds(notice, united)),
        *_several(parts),
        *_dosed_by(situation, parts),
    ]
    gravest: dict[str, Notice] = {}
    for notice in rules.in_order(found):
        gravest.setdefault(notice.code, notice)
    return tuple(gravest.values())


def _of_part(situation: Situation, part: Option, answered: set[Answers]) -> Iterator[Notice]:
    again = {notice.code for notice in rules.of_whole(situation, _draft_of(situation, part.doses))}
    for notice in part.notices:
        if notice.code not in again and ANSWERED_BY.get(notice.code) not in answered:
            yield notice


def _holds(notice: Notice, united: United) -> bool:
    moved_alone = any(dose.operation is Operation.TRANSPOSE for dose in united.doses)
    return notice.code != ALONE or moved_alone


def _draft_of(situation: Situation, doses: tuple[Dose, ...]) -> Draft:
    return as_draft(situation, Family.COMBINED, doses)


def _dosed_by(situation: Situation, parts: Sequence[Option]) -> Iterator[Notice]:
    """A combination is printed with one table; each other source is told."""
    stamps = {stamp.id: stamp for stamp in (part.table or situation.table.stamp for part in parts)}
    if len(stamps) > 1:
        for stamp in stamps.values():
            named = ", ".join(part.title for part in parts if (part.table or situation.table.stamp) == stamp)
            yield Notice(
                code=f"dosed_by-{stamp.id}",
                text=f"{named}: {stamp.name}. {stamp.caution}",
                provenance=stamp.provenance,
                facts={},
                level=Level.NOTE,
            )


def _twice(united: United) -> Iterator[Notice]:
    for eye, muscle in united.twice:
        yield Notice(
            code=f"muscle_twice-{eye}-{muscle.lower()}",
            text=f"The {eye} {muscle.words} is operated by more than one part: they do not go together.",
            provenance=ONE_SITTING,
            facts={"eye": eye.value, "muscle": muscle.value},
            level=Level.STOP,
        )


def _several(parts: Sequence[Option]) -> Iterator[Notice]:
    for kind in Answers:
        several = [part for part in parts if part.answers is kind]
        if len(several) > 1:
            yield Notice(
                code=f"several_parts-{kind}",
                text=f"{len(several)} parts answer the {kind} deviation; see what is expected of them together.",
                provenance=SEVERAL,
                facts={"parts": float(len(several))},
                level=Level.CAUTION,
            )
