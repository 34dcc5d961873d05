"""A V made by overacting inferior obliques: they are weakened, each graded by the deviation in its adduction."""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.obliques.grading import (
    OVERACTION,
    adduction_not_measured,
    graded_dose,
    in_adduction_pd,
    is_outside,
    outside_print,
)
from planner.additions.part import Part
from planner.additions.patterns.letter import Letter, expected
from planner.additions.sources import INFERIOR_GRADED
from planner.figures import pd
from planner.options.reasons.reason import speaks_for
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.values.option import Answers, Dose, Expected, Family
from planner.values.statement import Notice, Statement

LOW_PD, HIGH_PD = 15.0, 25.0
WEAKENING = Provenance(mark=Mark.FROM_MEMORY, source="weakening of the inferior obliques takes 15 to 25 Δ from a V")


def parts(situation: Situation, found: Letter) -> Iterator[Part]:
    """Both inferior obliques, or the one that overacts."""
    if found.opens_down:
        return
    eyes = found.overacting
    name = "both" if len(eyes) > 1 else eyes[0].value
    id_ = f"pattern-weaken-io-{name}"
    doses: list[Dose] = []
    missing: list[Notice] = []
    for eye in eyes:
        adduction_pd = in_adduction_pd(situation, eye)
        if adduction_pd is None:
            missing.append(adduction_not_measured(eye))
        else:
            doses.append(graded_dose(situation, id_, eye, adduction_pd))
    text = f"The {'inferior obliques of both eyes overact' if len(eyes) > 1 else f'{name} inferior oblique overacts'}."
    yield Part(
        id=id_,
        family=Family.OBLIQUES,
        answers=Answers.PATTERN,
        table=INFERIOR_GRADED,
        title="Weaken both inferior obliques for the pattern"
        if len(eyes) > 1
        else f"Weaken the {name} inferior oblique for the pattern",
        doses=() if missing else tuple(doses),
        expected=(_expected(found),),
        reasons_for=(speaks_for("obliques_overact", text, OVERACTION).statement,),
        notices=tuple(missing) or tuple(outside_print(dose) for dose in doses if is_outside(dose)),
    )


def _expected(found: Letter) -> Expected:
    return expected(
        found,
        Statement(
            code="pattern_range_expected",
            text=f"{found.name}: about {LOW_PD:g} to {pd(HIGH_PD)} less are taught.",
            provenance=WEAKENING,
            facts={"low_pd": LOW_PD, "high_pd": HIGH_PD},
        ),
    )
