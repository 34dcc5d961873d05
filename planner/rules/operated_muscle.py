"""A muscle that was operated before does not lie where the table supposes it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Muscle
from planner.dosing.draft import Draft
from planner.figures import mm
from planner.provenance import Mark, Provenance
from planner.records.examination import PastOperation, PreviousOperation
from planner.situation import Situation
from planner.thresholds import reaches
from planner.values.option import Dose, Operation
from planner.values.statement import Level, Notice

LARGE_RECESSION_MM = 6.0

SUPPOSED = Provenance(mark=Mark.COMMON_PRACTICE, source="dose tables suppose muscles that were not operated before")
REDUCE = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "Wright KW (ed.), Pediatric Ophthalmology and Strabismus, appendix of surgical numbers: less LR resection for "
        "residual esotropia after a large MR recession of 6.0 mm or more; no figure given"
    ),
)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A caution for each muscle operated before, and one where a lateral resection is to be reduced."""
    for dose in draft.doses:
        done = situation.earlier(dose.eye, dose.muscle)
        if done:
            yield _operated(dose, done)
    for dose in draft.doses:
        if (dose.muscle, dose.operation) == (Muscle.LR, Operation.RESECT):
            yield from _reduce(situation, dose)


def _operated(dose: Dose, done: tuple[PreviousOperation, ...]) -> Notice:
    history = ", ".join(_words(each) for each in done)
    return Notice(
        code=f"operated_muscle-{dose.eye}-{dose.muscle.lower()}",
        text=(
            f"The {dose.eye} {dose.muscle.words} was operated before ({history}): "
            "the table's figures do not hold for it."
        ),
        provenance=SUPPOSED,
        facts={"eye": dose.eye.value, "muscle": dose.muscle.value},
        level=Level.CAUTION,
    )


_PAST_WORDS = {
    PastOperation.RECESS: "recession",
    PastOperation.RESECT: "resection",
    PastOperation.OTHER: "another operation",
    PastOperation.UNKNOWN: "operation not known",
}


def _words(done: PreviousOperation) -> str:
    parts = [_PAST_WORDS[done.operation], "" if done.mm is None else mm(done.mm), f"{done.year or ''}"]
    return " ".join(part for part in parts if part)


def _reduce(situation: Situation, dose: Dose) -> Iterator[Notice]:
    recessions = [each.mm for each in situation.earlier(dose.eye, Muscle.MR) if each.operation is PastOperation.RECESS]
    known = [recessed_mm for recessed_mm in recessions if recessed_mm is not None]
    if any(reaches(recessed_mm, LARGE_RECESSION_MM) for recessed_mm in known):
        why = f"its medial rectus was recessed {mm(max(known))}"
    elif len(known) < len(recessions):
        why = f"its medial rectus was recessed, possibly {mm(LARGE_RECESSION_MM)} or more"
    else:
        return
    yield Notice(
        code=f"reduce_lateral_resection-{dose.eye}",
        text=(
            f"{dose.eye.capitalize()} eye: {why}; a lateral rectus resection after that is reduced, by how much is not "
            "published."
        ),
        provenance=REDUCE,
        facts={"eye": dose.eye.value, "from_mm": LARGE_RECESSION_MM},
        level=Level.CAUTION,
    )
