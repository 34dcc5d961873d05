"""A notebook's cases as the audit and the calibration read every operation."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass

from planner.calibration.admission import Confounder, PastCase, Window
from planner.exchange.notebook.families import WORK
from planner.exchange.notebook.promise import promised_pd
from planner.followup.confounders import PALSY_OR_RESTRICTION
from planner.followup.outcome import Outcome, counted
from planner.precision.steady import steady
from planner.records.notebook import CarriedCase, Notebook
from planner.records.plan import RecordId
from planner.results.result import Result, Seen


@dataclass(frozen=True, kw_only=True)
class Carried:
    """A notebook by the id of its record."""

    id: RecordId
    notebook: Notebook


def carried_outcomes(carried: Carried, window: Window) -> Iterator[Outcome]:
    """One for each case, in the order of the rows; :class:`planner.errors.Refused` for what the table cannot dose."""
    for case in carried.notebook.cases:
        promised = promised_pd(case)
        own_id = case_id(carried.id, case.row)
        seen = tuple(_seen(case))
        yield Outcome(
            id=own_id,
            family=case.family.value,
            result=Result(
                id=own_id,
                operated_on=case.operated_on,
                surgeon=carried.notebook.surgeon_name,
                family=case.family.value,
                table=case.table,
                diagnosis=case.diagnosis.value if case.diagnosis else WORK[case.family].direction.words,
                before_pd=case.before_pd,
                expected_pd=steady(case.before_pd - WORK[case.family].direction.sign * promised, 1),
                seen=seen,
                reoperated_days=case.reoperated_days,
            ),
            past_case=_past_case(case, own_id, promised, seen, window),
        )


def case_id(notebook_id: str, row: int) -> str:
    """The id of a row's case: the same on every device."""
    digits = hashlib.sha256(f"{notebook_id} {row}".encode()).hexdigest()
    return "-".join((digits[:8], digits[8:12], digits[12:16], digits[16:20], digits[20:32]))


def _seen(case: CarriedCase) -> Iterator[Seen]:
    for visit in sorted(case.seen, key=lambda each: each.days_after):
        yield Seen(days_after=visit.days_after, distance_pd=visit.distance_pd, near_pd=visit.near_pd)


def _past_case(
    case: CarriedCase, own_id: str, promised: float, seen: tuple[Seen, ...], window: Window
) -> PastCase | None:
    last = counted(seen, window)
    if last is None:
        return None
    toward = WORK[case.family].direction.sign
    return PastCase(
        id=own_id,
        promised_pd=promised,
        achieved_pd=steady(toward * (case.before_pd - last.distance_pd), 1),
        days_after=last.days_after,
        confounders=tuple(_confounders(case, last.days_after)),
    )


def _confounders(case: CarriedCase, days_after: int) -> Iterator[Confounder]:
    if case.reoperated_days is not None and case.reoperated_days <= days_after:
        yield Confounder.REOPERATION
    if case.operated_before:
        yield Confounder.EARLIER_OPERATION
    if case.suture_moved:
        yield Confounder.ADJUSTED
    if case.complication:
        yield Confounder.COMPLICATION
    if case.palsy_or_restriction or case.diagnosis in PALSY_OR_RESTRICTION:
        yield Confounder.PALSY_OR_RESTRICTION
