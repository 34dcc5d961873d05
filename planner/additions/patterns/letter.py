"""The pattern as operations read it."""

from __future__ import annotations

from dataclasses import dataclass

from planner.additions.overaction import grade, overacts
from planner.anatomy import Eye, Muscle
from planner.figures import pd
from planner.findings.pattern import Shape
from planner.options.reasons.reason import common_practice
from planner.provenance import Provenance
from planner.situation import Situation
from planner.values.option import Answers, Expected, Unit
from planner.values.statement import Level, Notice, Statement

OBLIQUES_FIRST = common_practice("a pattern is answered by the obliques if they overact, otherwise by moved tendons")


@dataclass(frozen=True, kw_only=True)
class Letter:
    """``opens_down``: the deviation is more exo (less eso) in down-gaze, as in an A; in a V it is in up-gaze.

    ``pattern_pd`` is the deviation in down-gaze less that in up-gaze (V +), ``size_pd`` the change without sign.
    ``is_whole``: an A or a V, for which figures were published, and no Y or lambda. ``overacting`` are the eyes whose
    oblique that drives such a pattern overacts; ``ungraded`` those in which nobody graded it.
    """

    shape: Shape
    pattern_pd: float
    size_pd: float
    overacting: tuple[Eye, ...]
    ungraded: tuple[Eye, ...]

    @property
    def opens_down(self) -> bool:
        """Whether it is an A or its lower half."""
        return self.shape in (Shape.A, Shape.LAMBDA)

    @property
    def is_whole(self) -> bool:
        """Whether it is an A or a V."""
        return self.shape in (Shape.A, Shape.V)

    @property
    def name(self) -> str:
        """For example ``V pattern of 20 Δ``."""
        return f"{self.shape} pattern of {pd(self.size_pd)}"

    @property
    def notices(self) -> tuple[Notice, ...]:
        """A caution where nobody graded the obliques that may drive the pattern."""
        if not self.ungraded:
            return ()
        muscle = driver(self.shape)
        text = f"Whether the {muscle.plural} overact was not graded; if they do, they are operated instead."
        return (
            Notice(code="obliques_not_graded", text=text, provenance=OBLIQUES_FIRST, facts={}, level=Level.CAUTION),
        )


def driver(shape: Shape) -> Muscle:
    """The oblique whose overaction makes such a pattern."""
    return Muscle.SO if shape in (Shape.A, Shape.LAMBDA) else Muscle.IO


def letter(situation: Situation) -> Letter | None:
    """The pattern, None where there is none or it is an X, for which nothing was published."""
    pattern = situation.findings.pattern
    if pattern.shape not in (Shape.A, Shape.V, Shape.Y, Shape.LAMBDA):
        return None
    muscle = driver(pattern.shape)
    return Letter(
        shape=pattern.shape,
        pattern_pd=pattern.down_minus_up_pd or 0.0,
        size_pd=pattern.size_pd,
        overacting=tuple(eye for eye in Eye if overacts(situation, eye, muscle)),
        ungraded=tuple(eye for eye in Eye if grade(situation, eye, muscle) is None),
    )


def expected(found: Letter, statement: Statement) -> Expected:
    """An effect on the pattern for which no figure is published."""
    return Expected(
        answers=Answers.PATTERN,
        unit=Unit.PRISM_DIOPTRES,
        before=found.pattern_pd,
        correction=None,
        residual=None,
        spread=None,
        statement=statement,
    )


def not_published(found: Letter, provenance: Provenance) -> Expected:
    """The same with the plain sentence."""
    text = f"{found.name}: what this takes from it is not published here."
    return expected(found, Statement(code="pattern_not_predicted", text=text, provenance=provenance, facts={}))
