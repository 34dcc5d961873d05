"""The prediction of an option."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import sqrt

from planner.age import age_years
from planner.anatomy import Muscle
from planner.figures import mm, pd
from planner.measurement import Figure
from planner.outlook.collapse import NONE, Collapse, collapse
from planner.outlook.positions import Positions, positions
from planner.prediction import ChosenSpread, Expectation, dose_response, horizontal_spread, predict, result
from planner.provenance import Mark, Provenance
from planner.situation import Situation
from planner.thresholds import exceeds
from planner.values.option import Dose, Expected, Operation
from planner.values.prediction import Outcome, Prediction
from planner.values.statement import Statement

SAME = Provenance(
    mark=Mark.HOUSE_RULE, source="no figures are published for other positions than the one that was planned for"
)
NOT_PUBLISHED = Provenance(mark=Mark.HOUSE_RULE, source="an effect that was not published is not counted")
WANTED = Provenance(mark=Mark.HOUSE_RULE, source="what the surgeon wants early counts as it is expected early")
HORIZONTAL = (Muscle.MR, Muscle.LR)
LENGTHENED_OR_SHORTENED = (Operation.RECESS, Operation.RESECT)


@dataclass(frozen=True, kw_only=True)
class Outlook:
    """A situation and its positions, None where there is no horizontal deviation to predict."""

    situation: Situation
    positions: Positions | None

    def of(self, doses: Sequence[Dose], residual_pd: float, expected: Sequence[Expected] = ()) -> Prediction | None:
        """What ``doses`` leave that are expected to leave ``residual_pd`` of the target; None without horizontal ones.

        ``expected`` is what the operation does to other deviations; a pattern's published change counts in the gazes.
        """
        counted = [dose for dose in doses if dose.muscle in HORIZONTAL and dose.operation in LENGTHENED_OR_SHORTENED]
        if self.positions is None or not counted:
            return None
        chosen = self._spread(counted)
        change = collapse(expected)
        correction_pd = self.situation.target.horizontal_pd - residual_pd
        at = self.positions

        def outcome(figure: Figure) -> Outcome:
            return self._outcome(figure, correction_pd, chosen.sd_pd, change or NONE)

        aimed = outcome(at.target)
        return Prediction(
            distance=outcome(at.distance) if at.distance else None,
            near=outcome(at.near) if at.near else None,
            gazes=tuple(outcome(figure) for figure in at.gazes),
            spread=chosen.reason,
            steps=(
                *at.errors,
                dose_response(chosen.sd_pd),
                *self._assumed(at, counted),
                *((change.statement,) if change else ()),
                *result(aimed),
            ),
        )

    def _spread(self, counted: Sequence[Dose]) -> ChosenSpread:
        born_on = self.situation.case.born_on
        years = None if born_on is None else age_years(born_on, self.situation.examination.examined_on)
        return horizontal_spread(counted, self.situation.target.horizontal_pd, years)

    def _outcome(self, figure: Figure, correction_pd: float, spread_pd: float, change: Collapse) -> Outcome:
        gaze = figure.reading.gaze
        residual = predict(
            Expectation(
                reading_pd=figure.value_pd,
                limits=figure.limits,
                correction_pd=correction_pd + change.correction_pd(gaze),
                spread_pd=sqrt(spread_pd**2 + change.own_spread_pd(gaze) ** 2),
                operated_for=self.situation.direction,
            )
        )
        return Outcome(
            gaze=gaze,
            range=figure.reading.range,
            before_pd=figure.value_pd,
            mean_pd=residual.mean_pd,
            sd_pd=residual.sd_pd,
            low_pd=residual.low_pd,
            high_pd=residual.high_pd,
            within_pd=residual.within_pd,
            within_percent=residual.within_percent,
            undercorrected_percent=residual.undercorrected_percent,
            overcorrected_percent=residual.overcorrected_percent,
        )

    def _assumed(self, at: Positions, counted: Sequence[Dose]) -> Iterator[Statement]:
        reading = at.target.reading
        if at.gazes or (at.distance and at.near):
            yield Statement(
                code="same_correction_assumed",
                text=f"Elsewhere the same correction is assumed as {reading.gaze.words} at {reading.range}.",
                provenance=SAME,
                facts={},
            )
        if at.others_not_used:
            yield Statement(
                code="other_readings_not_used",
                text="What was measured with another correction or in another condition than the target is not used.",
                provenance=SAME,
                facts={},
            )
        more_mm = max(min(dose.adjustment_mm, dose.figure_mm - (dose.table_mm or 0.0)) for dose in counted)
        if exceeds(more_mm, 0.0):
            yield Statement(
                code="addition_not_counted",
                text=f"What {mm(more_mm)} more for the larger near angle does is not counted: near may end less eso.",
                provenance=NOT_PUBLISHED,
                facts={"more_mm": more_mm},
            )
        wanted_pd = self.situation.case.overcorrection_pd
        if exceeds(wanted_pd, 0.0):
            yield Statement(
                code="early_overcorrection_counted",
                text=f"The early overcorrection of {pd(wanted_pd)} that the surgeon wants is part of what is expected.",
                provenance=WANTED,
                facts={"overcorrection_pd": wanted_pd},
            )


def outlook(situation: Situation) -> Outlook:
    """The outlook of a situation, for all its options."""
    return Outlook(situation=situation, positions=positions(situation.measurements, situation.target))
