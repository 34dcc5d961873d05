"""What the set-up rules read of a plan, its patient and the surgeon's wishes."""

from __future__ import annotations

from dataclasses import dataclass

from planner.age import age_years
from planner.anatomy import Eye, Muscle
from planner.errors import Fault, Refused
from planner.findings import find, target
from planner.measurement import measure
from planner.records.case import Case
from planner.records.plan import Plan
from planner.records.practice import FigureName
from planner.records.set_up import Wishes
from planner.setup.figures import Figures
from planner.setup.health import NOTHING_KNOWN, Health
from planner.values.option import Dose

Place = tuple[Eye, Muscle]


@dataclass(frozen=True, kw_only=True)
class Facts:
    """``reoperated``: muscles operated before in an eye of this plan; ``lost``: those that may have slipped.

    ``health`` decides what is warned of, and never which way stands or is refused.
    """

    on: str
    age_years: int
    eyes: frozenset[Eye]
    doses: tuple[Dose, ...]
    reoperated: tuple[Place, ...]
    lost: tuple[Place, ...]
    wishes: Wishes
    figures: Figures
    health: Health

    @property
    def is_child(self) -> bool:
        """Whether the patient is under the age from which drops alone are thought of."""
        return self.age_years < self.figures[FigureName.CHILD_UNDER_YEARS]

    @property
    def is_bilateral(self) -> bool:
        """Whether both eyes are operated."""
        return len(self.eyes) > 1

    @property
    def adjustable(self) -> tuple[Dose, ...]:
        """The muscles that take an adjustable suture."""
        return tuple(dose for dose in self.doses if dose.adjustable)


def facts(  # noqa: PLR0913 -- each is a fact of its own
    born_on: str, plan: Plan, *, on: str, wishes: Wishes, figures: Figures, health: Health = NOTHING_KNOWN
) -> Facts:
    """:class:`Refused` with ``operation_before_birth`` where the day cannot be."""
    if on < born_on:
        text = "The operation would be before the patient was born."
        raise Refused(Fault(code="operation_before_birth", text=text, field="on", value=on, allowed=born_on))
    doses = plan.option.doses
    eyes = frozenset(dose.eye for dose in doses)
    done = {(each.eye, each.muscle) for each in plan.case.examination.previous_operations if each.eye in eyes}
    return Facts(
        on=on,
        age_years=age_years(born_on, on),
        eyes=eyes,
        doses=doses,
        reoperated=in_order(done),
        lost=in_order({place for place in _slipped(plan.case) if place[0] in eyes}),
        wishes=wishes,
        figures=figures,
        health=health,
    )


def in_order(places: set[Place]) -> tuple[Place, ...]:
    """Right eye first, muscles as the anatomy lists them."""
    return tuple((eye, muscle) for eye in Eye for muscle in Muscle if (eye, muscle) in places)


def place_words(places: tuple[Place, ...]) -> str:
    """``right lateral rectus and left medial rectus``."""
    words = [f"{eye} {muscle.words}" for eye, muscle in places]
    return " and ".join((", ".join(words[:-1]), words[-1])) if len(words) > 1 else words[0]


def _slipped(case: Case) -> set[Place]:
    measurements = measure(case.examination)
    found = find(measurements, target(measurements, case.aim))
    return {(each.eye, each.muscle) for each in found.previous.slipped}
