"""What the operation is to reach: the chances that the signed plan carries, said in plain words."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.counselling.people import people, to_a_hundred
from planner.counselling.saying import origin, says
from planner.counselling.tenths import tenths
from planner.figures import pd
from planner.provenance import Mark, Provenance
from planner.records.case import Aim
from planner.records.plan import Plan
from planner.values.counselling import Figure, Passage, Said
from planner.values.option import Answers
from planner.values.prediction import Outcome, Prediction

COMMON: Final = Provenance(mark=Mark.COMMON_PRACTICE, source="how the aim of squint surgery is explained")
SUCCESS: Final = "reports usually count an operation as successful within 10 Δ of straight"


def expected(plan: Plan) -> tuple[Passage, ...]:
    """The aim, and the chances where the plan has them."""
    return (_aim(), *_horizontal(plan), *_without_figures(plan))


def _aim() -> Passage:
    return Passage(
        code="aim",
        heading=says("What the operation is for"),
        sentences=(
            says("The eyes are to stand straighter. Muscles on the outside of the eye are moved or shortened."),
            says("The eye is not taken out, and the inside of the eye is not opened."),
            says("Glasses and patching may still be needed afterwards. A second operation may be needed later."),
        ),
        origin=origin(COMMON),
    )


def _horizontal(plan: Plan) -> Iterator[Passage]:
    prediction = plan.option.prediction
    found = prediction and _aimed(plan, prediction)
    if not (prediction and found):
        return
    counts = to_a_hundred((found.within_percent, found.undercorrected_percent, found.overcorrected_percent))
    within = f"{found.within_pd:g} Δ"
    words = (
        says("straight or nearly straight, within {within}", within=within),
        says("still turned the same way as now, by more than {within}", within=within),
        says("turned the other way, by more than {within}", within=within),
    )
    figures = (Figure.FULL, Figure.BARRED, Figure.CROSSED)
    yield Passage(
        code="chances",
        heading=says("How straight the eyes are expected to be"),
        sentences=(
            _interval(found),
            says("The unit Δ (prism dioptre) says how far an eye is turned."),
            says("This was calculated from published reports. It does not say what will happen to one person."),
            *_borrowed(prediction),
        ),
        origin=origin(Provenance(mark=Mark.COMPUTED, source=f"{_source(prediction)}; {SUCCESS}")),
        headline=tenths(found.within_percent),
        array=people(tuple(zip(figures, counts, words, strict=True))),
    )


def _aimed(plan: Plan, prediction: Prediction) -> Outcome | None:
    return prediction.near if plan.case.aim is Aim.NEAR else prediction.distance


def _interval(found: Outcome) -> Said:
    """Inwards is eso, outwards exo, whichever eye turns."""
    low, high = pd(found.low_pd), pd(found.high_pd)
    if found.low_pd < 0 < found.high_pd:
        return says(
            "For 95 of 100 people what remains is expected between {out} turned outwards and {in} turned inwards.",
            **{"out": low, "in": high},
        )
    if found.low_pd >= 0:
        return says(
            "For 95 of 100 people what remains is expected between {low} and {high} turned inwards.", low=low, high=high
        )
    return says(
        "For 95 of 100 people what remains is expected between {low} and {high} turned outwards.", low=high, high=low
    )


def _borrowed(prediction: Prediction) -> Iterator[Said]:
    if prediction.spread.code == "spread_borrowed":
        yield says("There is no such report of exactly this operation: the nearest was used, so this is less certain.")


def _source(prediction: Prediction) -> str:
    return str(prediction.spread.facts["source"])


def _without_figures(plan: Plan) -> Iterator[Passage]:
    """What the plan does to other deviations is explained by the surgeon, for its figures need the trade's words."""
    others = {each.answers for each in plan.option.expected if each.answers is not Answers.HORIZONTAL}
    if others or plan.option.prediction is None:
        yield Passage(
            code="without_figures",
            heading=says("What else the operation is to change"),
            sentences=(
                says("A part of this operation is for a height difference, a tilt or a drift of the eyes."),
                says("No simple figure is given for it here. The surgeon explains what to expect."),
            ),
            origin=origin(COMMON),
        )
