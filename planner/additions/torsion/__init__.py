"""Excyclotorsion: the front half of the superior oblique tendon brought forward (Harada-Ito).

One series stands behind it: 10.4 degrees before, 2.7 after, a mean correction of 7.7 degrees (95 % confidence interval
6.27 to 9.21). It is offered from the lower end of that interval on, below which the mean would turn the eye the other
way. What both eyes together would give is not published.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.dose import without_figure
from planner.additions.part import Part
from planner.additions.reading import READING
from planner.additions.sources import FLODIN, HARADA_ITO
from planner.anatomy import Eye, Muscle
from planner.options.reasons.reason import common_practice
from planner.precision.steady import steady
from planner.situation import Situation
from planner.thresholds import reaches
from planner.values.option import Answers, Dose, Expected, Family, Operation, Unit
from planner.values.statement import Level, Notice, Statement

MEAN_DEG, LOW_DEG, HIGH_DEG = 7.7, 6.27, 9.21
FRONT_HALF = common_practice("the front half of the tendon alone turns the eye and leaves its height")
WORDS = "front half of the tendon brought forward and to the temple"


def parts(situation: Situation) -> Iterator[Part]:
    """Each eye that is turned out enough, and both together."""
    eyes = tuple(eye for eye in Eye if reaches(torsion_deg(situation, eye), LOW_DEG))
    for eye in eyes:
        yield _part(situation, (eye,))
    if len(eyes) > 1:
        yield _part(situation, eyes)


def torsion_deg(situation: Situation, eye: Eye) -> float:
    """Excyclotorsion of an eye in primary position, degrees, 0 where it was not measured."""
    examination = situation.examination
    found = examination.excyclotorsion_right_deg if eye is Eye.RIGHT else examination.excyclotorsion_left_deg
    return found or 0.0


def _part(situation: Situation, eyes: tuple[Eye, ...]) -> Part:
    both = len(eyes) > 1
    notices = (_both(),) if both else (_interval(eyes[0]),)
    return Part(
        id=f"harada-ito-{'both' if both else eyes[0]}-so",
        family=Family.TORSION,
        answers=Answers.TORSION,
        table=HARADA_ITO,
        title="Harada-Ito on both superior obliques" if both else f"Harada-Ito on the {eyes[0]} superior oblique",
        doses=tuple(_dose(situation, eye) for eye in eyes),
        expected=tuple(_expected(situation, eye, None if both else MEAN_DEG) for eye in eyes),
        notices=notices,
    )


def _dose(situation: Situation, eye: Eye) -> Dose:
    degrees = torsion_deg(situation, eye)
    reading = Statement(
        code="reading",
        text=f"Excyclotorsion of the {eye} eye {degrees:g} degrees, double Maddox rod.",
        provenance=READING,
        facts={"torsion_deg": degrees, "eye": eye.value},
    )
    text = "The front half of the tendon is brought forward; the amount is set in theatre, for no dose is published."
    how = Statement(code="front_half", text=text, provenance=FRONT_HALF, facts={})
    return without_figure(eye, Muscle.SO, Operation.HARADA_ITO, reading, how, words=WORDS)


def _expected(situation: Situation, eye: Eye, correction_deg: float | None) -> Expected:
    degrees = torsion_deg(situation, eye)
    before = f"Excyclotorsion of the {eye} eye {degrees:g} degrees"
    if correction_deg is None:
        code, residual, text = "torsion_not_predicted", None, "what both eyes together give is not published."
    else:
        residual = steady(degrees - correction_deg, 1)
        code = "torsion_expected"
        text = (
            f"{correction_deg:g} less in the mean of the series (95 % confidence interval of the mean {LOW_DEG:g} to "
            f"{HIGH_DEG:g}), which leaves {residual:g}."
        )
    return Expected(
        answers=Answers.TORSION,
        unit=Unit.DEGREES,
        before=degrees,
        correction=correction_deg,
        residual=residual,
        spread=None,
        statement=Statement(
            code=f"{code}-{eye}",
            text=f"{before}: {text}",
            provenance=FLODIN,
            facts={"mean_deg": MEAN_DEG, "low_deg": LOW_DEG, "high_deg": HIGH_DEG, "eye": eye.value},
        ),
        eye=eye,
    )


def _interval(eye: Eye) -> Notice:
    return Notice(
        code=f"interval_of_the_mean-{eye}",
        text="The interval is of the series' mean; how far single patients scatter is not published.",
        provenance=FLODIN,
        facts={"low_deg": LOW_DEG, "high_deg": HIGH_DEG},
        level=Level.NOTE,
    )


def _both() -> Notice:
    return Notice(
        code="no_published_dose-both-so",
        text="What a Harada-Ito in both eyes corrects is not published here; the surgeon decides.",
        provenance=FLODIN,
        facts={},
        level=Level.CAUTION,
    )
