"""From a case to everything the engine says about it."""

from __future__ import annotations

from planner import additions, tables
from planner.combined import combine
from planner.disclaimer import DISCLAIMER
from planner.errors import Fault, Refused
from planner.findings import find, target
from planner.measurement import measure
from planner.options import changes, offer
from planner.options.order import EXPLANATION
from planner.principles import principles
from planner.records.case import Case
from planner.situation import Situation
from planner.values.proposal import Proposal
from planner.version import ENGINE_VERSION

SCHEMA = 1


def propose(case: Case) -> Proposal:
    """The findings and options of ``case``.

    :class:`Refused` with ``unknown_table``, ``no_primary_distance``, ``aim_not_measured``, ``no_horizontal_deviation``,
    ``examined_before_birth``, ``unknown_option``, ``option_without_doses``, ``unknown_muscle``,
    ``dose_without_figure`` or what :func:`planner.combined.combine` refuses.
    """
    situation = situate(case)
    options, beside = offer(situation), additions.offer(situation)
    changes.check(case.changes, (*options, *beside))
    return Proposal(
        schema=SCHEMA,
        engine_version=ENGINE_VERSION,
        table=situation.table.stamp,
        target=situation.target,
        measured=situation.measurements.measured,
        findings=situation.findings.statements,
        options=options,
        notices=(EXPLANATION,),
        disclaimer=DISCLAIMER,
        additions=beside,
        combined=combine(situation, (*options, *beside)),
        principles=principles(case.examination),
    )


def situate(case: Case) -> Situation:
    """What is known of ``case`` before anything is offered; :class:`Refused` where its readings cannot be read."""
    _check_dates(case)
    table = tables.chosen(case.table, case.clinic_table)
    measurements = measure(case.examination)
    answered = target(measurements, case.aim)
    findings = find(measurements, answered)
    return Situation(case=case, table=table, measurements=measurements, target=answered, findings=findings)


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
