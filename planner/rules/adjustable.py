"""Where an adjustable suture goes if three muscles are operated."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.option import Family
from planner.values.statement import Level, Notice

WRIGHT = Provenance(
    mark=Mark.PUBLISHED,
    source="Wright KW (ed.), Pediatric Ophthalmology and Strabismus, appendix of surgical numbers: three muscles",
)


def notices(_situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A note on three muscles."""
    if draft.recipe.family is Family.THREE_MUSCLES:
        ((eye, _),) = Counter(move.eye for move in draft.recipe.moves).most_common(1)
        yield Notice(
            code="adjustable_suture",
            text=f"If a suture is to be adjustable, it goes on the {eye} eye, which has two muscles operated.",
            provenance=WRIGHT,
            facts={"eye": eye.value},
            level=Level.NOTE,
        )
