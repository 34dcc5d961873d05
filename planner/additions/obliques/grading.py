"""The inferior oblique weakened by the vertical deviation in adduction.

below 15 Δ    recession of 8 to 10 mm; the smaller figure is taken
above 15 Δ    recession of 12 mm with anteriorisation
at 15 Δ       print does not say; the smaller operation is taken
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.additions.dose import set_mm
from planner.additions.overaction import overacts
from planner.additions.part import Part
from planner.additions.reading import READING
from planner.additions.sources import GRADED, INFERIOR_GRADED
from planner.additions.vertical.hyper import Hyper, expected_without_figure, hyper, hyper_of
from planner.anatomy import Eye, Muscle
from planner.figures import mm, pd
from planner.options.reasons.reason import common_practice, speaks_against, speaks_for
from planner.provenance import Mark, Provenance
from planner.records.examination import Gaze
from planner.situation import Situation
from planner.thresholds import exceeds, same
from planner.values.option import Answers, Dose, Family, Operation
from planner.values.statement import Level, Notice, Statement

LARGE_PD = 15.0
SMALLEST_MM, LARGEST_MM, ANTERIOR_MM = 8.0, 10.0, 12.0
SMALLER = Provenance(
    mark=Mark.HOUSE_RULE, source="where print gives a range, or leaves a limit open, the smaller operation is taken"
)
SURGEON = Provenance(mark=Mark.HOUSE_RULE, source="the surgeon's figure counts; the table's stays beside it")
OVERACTION = common_practice("an inferior oblique is weakened where it overacts")
FIFTEEN = common_practice("up to 15 Δ in primary position one muscle, more two")
ADDUCTION = {Eye.RIGHT: Gaze.LEFT, Eye.LEFT: Gaze.RIGHT}


def parts(situation: Situation) -> Iterator[Part]:
    """The inferior oblique of the higher eye, if it overacts."""
    found = hyper(situation)
    if found is None or not overacts(situation, found.higher, Muscle.IO):
        return
    eye = found.higher
    id_ = f"weaken-io-{eye}"
    adduction_pd = in_adduction_pd(situation, eye)
    doses = () if adduction_pd is None else (graded_dose(situation, id_, eye, adduction_pd),)
    yield Part(
        id=id_,
        family=Family.OBLIQUES,
        answers=Answers.VERTICAL,
        table=INFERIOR_GRADED,
        title=f"Weaken the {eye} inferior oblique, graded by the deviation in adduction",
        doses=doses,
        expected=(expected_without_figure(found, "graded weakening; the source gives no correction in Δ."),)
        if doses
        else (),
        reasons_for=(
            speaks_for(
                "oblique_overacts", f"The {eye} inferior oblique overacts.", OVERACTION, eye=eye.value
            ).statement,
        ),
        reasons_against=tuple(_against(found)),
        notices=(*found.nature.notices, *(outside_print(dose) for dose in doses if is_outside(dose)))
        if doses
        else (adduction_not_measured(eye),),
    )


def in_adduction_pd(situation: Situation, eye: Eye) -> float | None:
    """By how much the eye is higher when it looks towards the nose; None where that was not measured."""
    return hyper_of(situation, eye, ADDUCTION[eye])


def graded_dose(situation: Situation, option: str, eye: Eye, adduction_pd: float) -> Dose:
    """The dose that the deviation in adduction asks for, or what the surgeon set."""
    large = exceeds(adduction_pd, LARGE_PD)
    table_mm = ANTERIOR_MM if large else SMALLEST_MM
    own_mm = set_mm(situation, option, eye, Muscle.IO)
    changed = own_mm is not None and not same(own_mm, table_mm)
    final_mm = own_mm if own_mm is not None and changed else table_mm
    return Dose(
        eye=eye,
        muscle=Muscle.IO,
        operation=Operation.ANTERIORISE if large else Operation.RECESS,
        mm=final_mm,
        table_mm=table_mm,
        changed=changed,
        insertion_mm=None,
        limbus_mm=None,
        steps=tuple(_steps(eye, adduction_pd, table_mm, final_mm)),
        attachment_words="recessed along its course and brought forward"
        if large
        else f"recessed along its course; print gives {SMALLEST_MM:g} to {mm(LARGEST_MM)}",
    )


def _steps(eye: Eye, adduction_pd: float, table_mm: float, final_mm: float) -> Iterator[Statement]:
    where = f"{ADDUCTION[eye]} gaze, adduction of the {eye} eye"
    higher = f"{pd(adduction_pd)} {'higher' if adduction_pd >= 0 else 'lower'}"
    yield Statement(
        code="reading",
        text=f"The {eye} eye is {higher} in {where}.",
        provenance=READING,
        facts={"adduction_pd": adduction_pd, "eye": eye.value},
    )
    large = same(table_mm, ANTERIOR_MM)
    yield Statement(
        code="grade",
        text=f"Above {pd(LARGE_PD)}: recession of {mm(ANTERIOR_MM)} with anteriorisation."
        if large
        else f"Below {pd(LARGE_PD)}: recession of {SMALLEST_MM:g} to {mm(LARGEST_MM)}.",
        provenance=GRADED,
        facts={"threshold_pd": LARGE_PD, "mm": table_mm},
    )
    if not large:
        open_limit = same(adduction_pd, LARGE_PD)
        text = f"At {pd(LARGE_PD)} print does not say which; " if open_limit else ""
        yield Statement(
            code="smaller_end",
            text=f"{text}{'the' if open_limit else 'The'} smaller figure, {mm(SMALLEST_MM)}, is taken.",
            provenance=SMALLER,
            facts={"up_to_mm": LARGEST_MM},
        )
    if not same(final_mm, table_mm):
        yield Statement(
            code="changed",
            text=f"The surgeon set {mm(final_mm)}; print says {mm(table_mm)}.",
            provenance=SURGEON,
            facts={"table_mm": table_mm, "mm": final_mm},
        )


def _against(found: Hyper) -> Iterator[Statement]:
    if exceeds(found.size_pd, LARGE_PD):
        text = f"{pd(found.size_pd)} are more than one muscle is usually asked for."
        yield speaks_against("more_than_one_muscle", text, FIFTEEN, hyper_pd=found.size_pd).statement


def is_outside(dose: Dose) -> bool:
    """Whether the surgeon's figure leaves what print says."""
    if dose.operation is Operation.RECESS:
        return exceeds(SMALLEST_MM, dose.figure_mm) or exceeds(dose.figure_mm, LARGEST_MM)
    return not same(dose.figure_mm, ANTERIOR_MM)


def outside_print(dose: Dose) -> Notice:
    """The surgeon's figure is not one that was published."""
    return Notice(
        code=f"outside_print-{dose.eye}-io",
        text=f"{dose.eye.capitalize()} eye: {mm(dose.figure_mm)} is not what print says for the inferior oblique here.",
        provenance=GRADED,
        facts={"mm": dose.figure_mm},
        level=Level.CAUTION,
    )


def adduction_not_measured(eye: Eye) -> Notice:
    """What grades the operation is missing: a stop."""
    return Notice(
        code=f"adduction_not_measured-{eye}",
        text=(
            f"The vertical deviation in {ADDUCTION[eye]} gaze, adduction of the {eye} eye, was not measured, and it "
            "grades this operation: measure it."
        ),
        provenance=GRADED,
        facts={"eye": eye.value},
        level=Level.STOP,
    )
