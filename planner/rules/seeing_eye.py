"""The eye that the patient lives by is not put at risk for alignment."""

from __future__ import annotations

from collections.abc import Iterator

from planner.dosing.draft import Draft
from planner.findings.vision import WHO
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.statement import Level, Notice

SPARED = Provenance(
    mark=Mark.COMMON_PRACTICE,
    source=f"a sensory deviation is operated on the poorly seeing eye; poorly by: {WHO.source} ({WHO.mark})",
)

SENSORY = Provenance(mark=Mark.COMMON_PRACTICE, source="a sensory deviation is operated on the poorly seeing eye")


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """A stop on the only seeing eye.

    A caution on the better eye where the other sees 6/60 or less, or has the deviation by its poor sight.
    """
    vision = situation.findings.vision
    if vision.only in draft.recipe.eyes:
        text = f"The {vision.only} eye is the only seeing eye: this operation would put it at risk."
        yield Notice(code="only_seeing_eye", text=text, provenance=SPARED, facts={}, level=Level.STOP)
    elif vision.leading in draft.recipe.eyes:
        text = f"The {vision.leading} eye is by far the better seeing eye, and this operation includes it."
        yield Notice(code="better_seeing_eye", text=text, provenance=SPARED, facts={}, level=Level.CAUTION)
    elif situation.sensory_eye and situation.sensory_eye.other in draft.recipe.eyes:
        other = situation.sensory_eye.other
        text = f"A sensory deviation of the {other.other} eye is kept to that eye; this operation includes the {other}."
        yield Notice(code="sensory_other_eye", text=text, provenance=SENSORY, facts={}, level=Level.CAUTION)
