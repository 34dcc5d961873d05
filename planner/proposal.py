"""From a case to everything the engine says about it."""

from __future__ import annotations

from planner import tables
from planner.disclaimer import DISCLAIMER
from planner.errors import Fault, Refused
from planner.findings import find, target
from planner.measurement import measure
from planner.options import offer
from planner.options.order import EXPLANATION
from planner.records.case import Case
from planner.situation import Situation
from planner.values.proposal import Proposal
from planner.version import ENGINE_VERSION

SCHEMA = 1


def propose(case: Case) -> Proposal:
    """The findings and options of ``case``.

    :class:`Refused` with ``unknown_table``, ``no_primary_distance``, ``aim_not_measured``, ``no_horizontal_deviation``,
    ``examined_before_birth``, ``unknown_option``, ``option_without_doses`` or ``unknown_muscle``.
    """
    _check_dates(case)
    table = tables.table(case.table)
    measurements = measure(case.examination)
    answered = target(measurements, case.aim)
    findings = find(measurements, answered)
    situation = Situation(case=case, table=table, measurements=measurements, target=answered, findings=findings)
    return Proposal(
        schema=SCHEMA,
        engine_version=ENGINE_VERSION,
        table=table.stamp,
        target=answered,
        measured=measurements.measured,
        findings=findings.statements,
        options=offer(situation),
        notices=(EXPLANATION,),
        disclaimer=DISCLAIMER,
    )


def _check_dates(case: Case) -> None:
    examined_on = case.examination.examined_on
    if case.born_on is not None and examined_on < case.born_on:
        raise Refused(
            Fault(
                code="examined_before_birth",
                text="The examination is dated before the patient's birth.",
                field="examination.examined_on",
                value=examined_on,
                allowed=f"a date from {case.born_on} on",
            )
        )
