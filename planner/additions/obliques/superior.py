"""The superior oblique tucked where it is weak, weakened where it overacts: no dose is published, so none is given."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.additions.dose import set_mm, without_figure
from planner.additions.overaction import has_diagnosis, overacts, underacts
from planner.additions.part import Part
from planner.additions.sources import NO_DOSE
from planner.additions.vertical.hyper import Hyper, expected_without_figure, hyper
from planner.anatomy import Eye, Muscle
from planner.options.reasons.reason import common_practice
from planner.palsy import WeakMuscle
from planner.records.diagnosis import Diagnosis
from planner.situation import Situation
from planner.values.option import Answers, Dose, Family, Operation
from planner.values.statement import Level, Notice, Statement

BY_TRACTION = common_practice("a tuck is drawn as far as the traction test in theatre allows")
LAX_TENDON = common_practice("a tuck is for a lax tendon; a tight one gives an acquired Brown syndrome")
OVERACTION = common_practice("a superior oblique is weakened where it overacts")


def parts(situation: Situation) -> Iterator[Part]:
    """A tuck for the higher eye's weak muscle, a weakening for the lower eye's overacting one."""
    found = hyper(situation)
    if found is None:
        return
    if _is_weak(situation, found.higher):
        yield _tuck(situation, found)
    if overacts(situation, found.lower, Muscle.SO):
        yield _weaken(found)


def _is_weak(situation: Situation, eye: Eye) -> bool:
    test = situation.findings.palsy.test
    return (
        underacts(situation, eye, Muscle.SO)
        or has_diagnosis(situation, Diagnosis.FOURTH_NERVE_PALSY, eye)
        or (test is not None and test.weak == WeakMuscle(eye=eye, muscle=Muscle.SO))
    )


def _tuck(situation: Situation, found: Hyper) -> Part:
    eye = found.higher
    id_ = f"tuck-so-{eye}"
    why = Statement(code="weak", text=f"The {eye} superior oblique is weak.", provenance=BY_TRACTION, facts={})
    dose = without_figure(
        eye, Muscle.SO, Operation.TUCK, found.reading, why, words="as far as the traction test in theatre allows"
    )
    return Part(
        id=id_,
        family=Family.OBLIQUES,
        answers=Answers.VERTICAL,
        table=NO_DOSE,
        title=f"Tuck the {eye} superior oblique",
        doses=(_as_set(dose, set_mm(situation, id_, eye, Muscle.SO)),),
        expected=(expected_without_figure(found, "what a tuck corrects is not published here."),),
        notices=(
            *found.nature.notices,
            no_published_dose(eye, "a superior oblique tuck"),
            Notice(
                code=f"lax_tendon-{eye}",
                text=f"Feel by traction test whether the {eye} tendon is lax: a tuck of a tight one limits elevation.",
                provenance=LAX_TENDON,
                facts={"eye": eye.value},
                level=Level.CAUTION,
            ),
        ),
    )


def _as_set(dose: Dose, own_mm: float | None) -> Dose:
    if own_mm is None:
        return dose
    text = "The surgeon set this figure; none is published."
    said = Statement(code="changed", text=text, provenance=BY_TRACTION, facts={"mm": own_mm})
    return replace(dose, mm=own_mm, changed=True, steps=(*dose.steps, said))


def _weaken(found: Hyper) -> Part:
    eye = found.lower
    return Part(
        id=f"weaken-so-{eye}",
        family=Family.OBLIQUES,
        answers=Answers.VERTICAL,
        table=NO_DOSE,
        title=f"Weaken the {eye} superior oblique",
        doses=(weakened(eye),),
        expected=(expected_without_figure(found, "what this weakening corrects is not published here."),),
        notices=(*found.nature.notices, no_published_dose(eye, "a superior oblique weakening")),
    )


def weakened(eye: Eye) -> Dose:
    """The superior oblique weakened in the way that the surgeon chooses."""
    why = Statement(code="overaction", text=f"The {eye} superior oblique overacts.", provenance=OVERACTION, facts={})
    words = "tenotomy, tenectomy or lengthening as the surgeon decides"
    return without_figure(eye, Muscle.SO, Operation.WEAKEN, why, words=words)


def no_published_dose(eye: Eye, what: str) -> Notice:
    """No dose is made up."""
    return Notice(
        code=f"no_published_dose-{eye}-so",
        text=f"{eye.capitalize()} eye: no dose is published here for {what}; the surgeon decides, and none is made up.",
        provenance=OVERACTION if "weakening" in what else BY_TRACTION,
        facts={"eye": eye.value},
        level=Level.CAUTION,
    )
