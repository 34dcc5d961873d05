"""A case and a surgeon's own results, answered."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Annotated

from planner.anatomy import Eye, Muscle
from planner.calibration import Calibration, PastCase, Posterior, calibrate, posterior
from planner.calibration.admission import Question as Learning
from planner.calibration.admission import Window
from planner.calibration.posterior import Interval
from planner.dosing.draft import Draft, source_of
from planner.dosing.recipe import Recipe
from planner.dosing.widest import widest_mm
from planner.figures import mm, pd
from planner.limits import Length, Unique
from planner.options.offer import FAMILIES
from planner.precision.steady import steady
from planner.proposal import situate
from planner.provenance import Mark, Provenance
from planner.records.case import Case, Change
from planner.situation import Situation
from planner.suggestion.looked_up import look_up
from planner.suggestion.reasons import reasons
from planner.thresholds import exceeds, same
from planner.values.option import Dose, Operation
from planner.values.statement import Statement

USUAL = Window()
LOOKED_UP = Provenance(
    mark=Mark.COMPUTED, source="the table, looked up at the deviation divided by the effect of one's own cases"
)
WIDEST = Provenance(mark=Mark.HOUSE_RULE, source="own results never suggest more than the widest maximum")


@dataclass(frozen=True, kw_only=True)
class OwnFamily:
    """The past cases of one family of operations, dosed by the table of the case."""

    family: Annotated[str, Length(1, 80)]
    cases: Annotated[tuple[PastCase, ...], Length(0, 20000), Unique(("id",))]


@dataclass(frozen=True, kw_only=True)
class Question:
    """A case, the families of which the surgeon wants to see the own results, and the follow-up that counts."""

    case: Case
    families: Annotated[tuple[OwnFamily, ...], Length(0, 100), Unique(("family",))]
    window: Window = USUAL


@dataclass(frozen=True, kw_only=True)
class SuggestedDose:
    """One muscle: ``proposed_mm`` is the option's own figure, the table's and what is added to it."""

    eye: Eye
    muscle: Muscle
    operation: Operation
    proposed_mm: float
    own_mm: float


@dataclass(frozen=True, kw_only=True)
class Suggestion:
    """What own results say of one option.

    ``does_pd`` is what the option's own doses are expected to correct in these hands, with the 95 % interval of a
    single case, null with too few cases; ``own_does_pd`` the same of the doses suggested. ``doses`` are empty, and
    ``own_does_pd`` null, where nothing is suggested; ``statements`` say why.
    """

    option: str
    family: str
    promised_pd: float
    does_pd: Interval | None
    own_does_pd: Interval | None
    doses: tuple[SuggestedDose, ...]
    statements: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class OwnColumn:
    """What was learned of each family that was asked about, and what that says of the options of the case."""

    calibrations: tuple[Calibration, ...]
    suggestions: tuple[Suggestion, ...]


@dataclass(frozen=True, kw_only=True)
class Learned:
    """What was learned of a family, in words and as the distribution behind them."""

    calibration: Calibration
    posterior: Posterior


def suggest(question: Question) -> OwnColumn:
    """One suggestion for each option with doses of the families; no option changes by it."""
    situation = situate(replace(question.case, changes=(), combine=()))
    learned = {own.family: _learned(own, question.window) for own in question.families}
    recipes = () if same(situation.target.horizontal_pd, 0) else _recipes(situation)
    return OwnColumn(
        calibrations=tuple(each.calibration for each in learned.values()),
        suggestions=tuple(
            _suggestion(situation, recipe, drafted, own)
            for recipe in recipes
            if (own := learned.get(family_of(recipe.id)))
            if (drafted := look_up(situation, recipe, 1.0)).reach.has_doses
        ),
    )


def family_of(option: str) -> str:
    """The option without its side."""
    return option.removesuffix("-right").removesuffix("-left")


def _learned(own: OwnFamily, window: Window) -> Learned:
    asked = Learning(family=own.family, cases=own.cases, window=window)
    return Learned(calibration=calibrate(asked), posterior=posterior(asked))


def _recipes(situation: Situation) -> tuple[Recipe, ...]:
    return tuple(recipe for family in FAMILIES for recipe in family.recipes(situation))


def _suggestion(situation: Situation, recipe: Recipe, drafted: Draft, learned: Learned) -> Suggestion:
    promised_pd = abs(drafted.correction_pd)
    factor = learned.calibration.look_up_factor
    hindered = tuple(reasons(situation, recipe))
    own = None if factor is None or hindered else look_up(situation, recipe, factor)
    doses = tuple(_doses(situation, recipe, drafted.doses, own.doses)) if own and own.reach.has_doses else ()
    return Suggestion(
        option=recipe.id,
        family=learned.calibration.family,
        promised_pd=steady(promised_pd, 1),
        does_pd=None if factor is None or hindered else _does(promised_pd, learned.posterior),
        own_does_pd=_does(_promised_pd(situation, recipe, doses), learned.posterior) if doses else None,
        doses=doses,
        statements=hindered if hindered or factor is None else tuple(_said(situation, factor, own, doses)),
    )


def _does(promised_pd: float, learned: Posterior) -> Interval:
    """What doses correct in these hands of which the table promises so much."""
    ratio = learned.next_case(promised_pd)
    return Interval(
        middle=steady(promised_pd * ratio.middle, 1),
        low=steady(promised_pd * ratio.low, 1),
        high=steady(promised_pd * ratio.high, 1),
    )


def _promised_pd(situation: Situation, recipe: Recipe, doses: tuple[SuggestedDose, ...]) -> float:
    """What the table promises of the doses that are suggested."""
    changes = tuple(
        Change(option=recipe.id, eye=dose.eye, muscle=dose.muscle, mm=dose.own_mm)
        for dose in doses
        if not same(dose.own_mm, dose.proposed_mm)
    )
    return abs(look_up(replace(situation, case=replace(situation.case, changes=changes)), recipe, 1.0).correction_pd)


def _doses(
    situation: Situation, recipe: Recipe, proposed: tuple[Dose, ...], own: tuple[Dose, ...]
) -> Iterator[SuggestedDose]:
    source = source_of(situation, recipe)
    for by_table, looked_up in zip(proposed, own, strict=True):
        most_mm = widest_mm(source, by_table.muscle, by_table.operation)
        yield SuggestedDose(
            eye=by_table.eye,
            muscle=by_table.muscle,
            operation=by_table.operation,
            proposed_mm=by_table.figure_mm,
            own_mm=max(by_table.figure_mm, most_mm) if exceeds(looked_up.figure_mm, most_mm) else looked_up.figure_mm,
        )


def _said(
    situation: Situation, factor: float, own: Draft | None, doses: tuple[SuggestedDose, ...]
) -> Iterator[Statement]:
    angle_pd = situation.dosed_pd * factor
    yield Statement(
        code="looked_up_at",
        text=f"Looked up at {pd(angle_pd)} instead of {pd(situation.dosed_pd)}.",
        provenance=LOOKED_UP,
        facts={"angle_pd": steady(angle_pd, 1), "dosed_pd": steady(situation.dosed_pd, 1)},
    )
    if not doses:
        yield Statement(
            code="outside_the_table",
            text="The table gives no dose there, so nothing is suggested.",
            provenance=LOOKED_UP,
            facts={},
        )
        return
    if all(same(dose.own_mm, dose.proposed_mm) for dose in doses):
        yield Statement(
            code="same_dose",
            text="To the half millimetre that is the table's dose: nothing to change.",
            provenance=LOOKED_UP,
            facts={},
        )
    for dose, looked_up in zip(doses, own.doses if own else (), strict=True):
        if exceeds(looked_up.figure_mm, dose.own_mm):
            yield Statement(
                code=f"own_held_at_maximum-{dose.eye}-{dose.muscle.lower()}",
                text=f"Held at {mm(dose.own_mm)}: {dose.eye} {dose.muscle.words}.",
                provenance=WIDEST,
                facts={"own_mm": dose.own_mm},
            )
