"""How many recti of one eye lose their anterior ciliary vessels, at this sitting and with earlier ones."""

from __future__ import annotations

from collections.abc import Iterator

from planner.anatomy import Eye
from planner.dosing.draft import Draft
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.statement import Level, Notice

ROUTINE, COUNSELLED = 2, 3

TEACHING = Provenance(
    mark=Mark.FROM_MEMORY,
    source="recti of one eye at one sitting: two are routine, three need counselling, four are not done",
)
ISCHAEMIA = Provenance(
    mark=Mark.PUBLISHED,
    source="Strabismus 2018: anterior segment ischaemia in 2 of 87 after three recti, 2.3 % (exact 95 % CI 0.3-8.1)",
)


def notices(situation: Situation, draft: Draft) -> Iterator[Notice]:
    """Up to two recti of an eye nothing; three, earlier ones counted, a caution; four at one sitting a stop."""
    for eye in Eye:
        now = {dose.muscle for dose in draft.doses if dose.eye is eye and dose.muscle.is_rectus}
        earlier = {
            each.muscle
            for each in situation.examination.previous_operations
            if each.eye is eye and each.muscle.is_rectus
        }
        if now:
            yield from _of_one_eye(eye, len(now), len(earlier - now))


def _of_one_eye(eye: Eye, now: int, earlier: int) -> Iterator[Notice]:
    facts = {"eye": eye.value, "now": float(now), "earlier": float(earlier)}
    name = f"{eye.capitalize()} eye"
    if now > COUNSELLED:
        text = f"{name}: {now} recti at one sitting are not done; the front of the eye may lose its blood supply."
        yield Notice(code=f"four_recti-{eye}", text=text, provenance=TEACHING, facts=facts, level=Level.STOP)
    elif now > ROUTINE:
        text = f"{name}: {now} recti at one sitting need counselling on anterior segment ischaemia."
        yield Notice(code=f"three_recti-{eye}", text=text, provenance=ISCHAEMIA, facts=facts, level=Level.CAUTION)
    elif now + earlier > ROUTINE:
        text = (
            f"{name}: {now} recti now and {earlier} other operated earlier; the vessels of {now + earlier} recti will "
            "have been cut, so counsel on anterior segment ischaemia."
        )
        yield Notice(
            code=f"recti_with_earlier-{eye}", text=text, provenance=ISCHAEMIA, facts=facts, level=Level.CAUTION
        )
