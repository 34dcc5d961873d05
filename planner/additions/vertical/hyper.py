"""Which eye is higher and by how much."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum, sqrt

from planner.additions.dissociated.telling import Nature, nature
from planner.additions.reading import READING
from planner.anatomy import Eye
from planner.figures import pd
from planner.findings.size import vertical_words
from planner.precision.steady import steady
from planner.provenance import Mark, Provenance
from planner.records.examination import Gaze, Range
from planner.rules.vertical import SMALLEST_OPERATION_PD
from planner.situation import Situation
from planner.thresholds import reaches
from planner.values.option import Answers, Expected, Unit
from planner.values.statement import Statement

NO_FIGURE = Provenance(mark=Mark.HOUSE_RULE, source="no effect is made up where none is published")


@dataclass(frozen=True, kw_only=True)
class Hyper:
    """``vertical_pd`` is signed, right hyper +; ``higher`` is the eye that is higher by ``size_pd``."""

    vertical_pd: float
    higher: Eye
    nature: Nature

    @property
    def size_pd(self) -> float:
        """The deviation without its sign."""
        return abs(self.vertical_pd)

    @property
    def lower(self) -> Eye:
        """The lower eye."""
        return self.higher.other

    @property
    def reading(self) -> Statement:
        """The first step of a dose."""
        return Statement(
            code="reading",
            text=f"{vertical_words(self.vertical_pd)}, primary position.",
            provenance=READING,
            facts={"hyper_pd": self.size_pd, "higher_eye": self.higher.value},
        )


def hyper(situation: Situation) -> Hyper | None:
    """The deviation of the primary position, where it is large enough for the least useful operation."""
    vertical_pd = situation.target.vertical_pd
    if vertical_pd is None or not reaches(abs(vertical_pd), SMALLEST_OPERATION_PD):
        return None
    higher = Eye.RIGHT if vertical_pd > 0 else Eye.LEFT
    return Hyper(vertical_pd=vertical_pd, higher=higher, nature=nature(situation, higher, abs(vertical_pd)))


def hyper_of(situation: Situation, eye: Eye, gaze: Gaze) -> float | None:
    """By how much ``eye`` is higher in ``gaze`` at distance (lower -), None where it was not measured."""
    figure = situation.measurements.vertical(gaze, Range.DISTANCE, situation.target.reading.correction)
    if figure is None:
        return None
    return figure.value_pd if eye is Eye.RIGHT else 0.0 - figure.value_pd


@dataclass(frozen=True, kw_only=True)
class Effect:
    """What one muscle is expected to take from the deviation, and the standard deviation of that, None if unknown."""

    correction_pd: float
    spread_pd: float | None
    provenance: Provenance


def expected(found: Hyper, effects: tuple[Effect, ...], words: str = "") -> Expected:
    """What the muscles do together; no figure at all where one of them has none."""
    sign = 1 if found.vertical_pd > 0 else -1
    correction_pd = steady(fsum(each.correction_pd for each in effects), 1)
    residual_pd = steady(found.size_pd - correction_pd, 1)
    spreads = [each.spread_pd for each in effects]
    known = [spread_pd for spread_pd in spreads if spread_pd is not None]
    spread_pd = steady(sqrt(fsum(each**2 for each in known)), 1) if len(known) == len(spreads) else None
    more = f", standard deviation {pd(spread_pd)}" if spread_pd is not None else ""
    before = vertical_words(found.vertical_pd)
    after = vertical_words(sign * residual_pd)
    sources = tuple(dict.fromkeys(each.provenance.source for each in effects))
    facts: dict[str, str | float] = {"correction_pd": correction_pd, "higher_eye": found.higher.value}
    return Expected(
        answers=Answers.VERTICAL,
        unit=Unit.PRISM_DIOPTRES,
        before=found.vertical_pd,
        correction=sign * correction_pd,
        residual=sign * residual_pd + 0.0,
        spread=spread_pd,
        statement=Statement(
            code="vertical_expected",
            text=f"{before}: {pd(correction_pd)} less are expected{more}, which leaves: {after}.{words}",
            provenance=Provenance(mark=effects[0].provenance.mark, source="; ".join(sources)),
            facts=facts if spread_pd is None else {**facts, "spread_pd": spread_pd},
        ),
    )


def expected_without_figure(found: Hyper, text: str) -> Expected:
    """No correction is published for the operation."""
    return Expected(
        answers=Answers.VERTICAL,
        unit=Unit.PRISM_DIOPTRES,
        before=found.vertical_pd,
        correction=None,
        residual=None,
        spread=None,
        statement=Statement(
            code="vertical_not_predicted",
            text=f"{vertical_words(found.vertical_pd)}: {text}",
            provenance=NO_FIGURE,
            facts={"higher_eye": found.higher.value},
        ),
    )
