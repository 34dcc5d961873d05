"""A dissociated deviation told from a true one.

In a true hyper one eye goes up and the other, when it is covered, down. In a dissociated one either eye goes up when
it is covered, and no eye goes down. The examination holds the upward drift of each eye, not the way down.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.anatomy import Eye
from planner.figures import pd
from planner.options.reasons.reason import common_practice
from planner.records.diagnosis import Breaker, Presence
from planner.situation import Situation
from planner.thresholds import exceeds, same
from planner.values.statement import Level, Notice

TELLING = common_practice("a dissociated eye drifts up under cover and its fellow never goes down for it")


class Kind(StrEnum):
    """What a vertical deviation straight ahead is."""

    TRUE = "true"
    MIXED = "mixed"
    UNCERTAIN = "not to be told apart"


@dataclass(frozen=True, kw_only=True)
class Nature:
    """The kind of the deviation, and what must be said about it."""

    kind: Kind
    notices: tuple[Notice, ...]


def drift_pd(situation: Situation, eye: Eye) -> float:
    """The upward drift of an eye under cover, 0 where none was measured."""
    examination = situation.examination
    drift = examination.dvd_right_pd if eye is Eye.RIGHT else examination.dvd_left_pd
    return drift or 0.0


def nature(situation: Situation, higher: Eye, size_pd: float) -> Nature:
    """Of a hyper of the eye ``higher``: true where no drift is known, mixed where it is larger than the drift."""
    drifts = [drift_pd(situation, eye) for eye in Eye]
    present = any(
        each.breaker is Breaker.DISSOCIATED and each.presence is Presence.PRESENT
        for each in situation.examination.conditions
    )
    if all(same(each, 0) for each in drifts) and not present:
        return Nature(kind=Kind.TRUE, notices=())
    drift = drift_pd(situation, higher)
    if exceeds(size_pd, drift) and exceeds(drift, 0):
        return Nature(kind=Kind.MIXED, notices=(_mixed(higher, size_pd, drift),))
    return Nature(kind=Kind.UNCERTAIN, notices=(_uncertain(higher),))


def _mixed(higher: Eye, size_pd: float, drift: float) -> Notice:
    return Notice(
        code="hyper_in_part_dissociated",
        text=(
            f"The {higher} eye also drifts up by {pd(drift)} under cover: of the {pd(size_pd)} only what makes the "
            "other eye go down when it is covered is a true hyper. Measure that, and dose for it alone."
        ),
        provenance=TELLING,
        facts={"hyper_pd": size_pd, "drift_pd": drift},
        level=Level.CAUTION,
    )


def _uncertain(higher: Eye) -> Notice:
    return Notice(
        code="hyper_may_be_dissociated",
        text=(
            f"The hyper of the {higher} eye may be a dissociated drift and no true deviation. See whether the other "
            "eye goes down when it is covered, and measure that."
        ),
        provenance=TELLING,
        facts={"higher_eye": higher.value},
        level=Level.CAUTION,
    )
