"""What keeps a notebook from being a record, beyond the limits of its fields.

Codes: ``unknown_table``, ``no_table_dose``, ``outside_table``, ``other_muscles``, ``other_direction``,
``told_twice``. A field is ``cases.N.column``.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.anatomy import Eye, Muscle
from planner.errors import Fault, Refused
from planner.exchange.notebook.families import WORK
from planner.exchange.notebook.promise import promised_pd
from planner.records.notebook import CarriedCase, Notebook
from planner.tables import table
from planner.thresholds import exceeds


def hindrances(notebook: Notebook) -> tuple[Fault, ...]:
    """Nothing if the notebook may be saved."""
    return tuple(
        replace(fault, field=f"cases.{place}.{fault.field}")
        for place, case in enumerate(notebook.cases)
        for fault in hindrances_of(case)
    )


def hindrances_of(case: CarriedCase) -> tuple[Fault, ...]:
    """What is wrong with one case; the table is asked only of one that holds together."""
    own = tuple(_own(case))
    if own:
        return own
    try:
        table(case.table)
        promised_pd(case)
    except Refused as refused:
        return refused.faults
    return ()


def _own(case: CarriedCase) -> Iterator[Fault]:
    work = WORK[case.family]
    if not exceeds(work.direction.sign * case.before_pd, 0.0):
        yield Fault(
            code="other_direction",
            text=f"This operation is for an {work.direction.words}. Look at the sign, or at the operation.",
            field="before_distance_pd",
            value=f"{case.before_pd:+g}",
            allowed=f"an {work.direction.words}, {'+' if work.direction.sign > 0 else '-'} or {work.direction}",
        )
    if case.muscles is None:
        return
    if case.table_dose_pd is not None:
        text = "Tell what was done once: in millimetres, or as the deviation the table was looked up at."
        value = f"{case.table_dose_pd:g}"
        yield Fault(
            code="told_twice", text=text, field="table_dose_pd", value=value, allowed="empty beside millimetres"
        )
    given = frozenset((each.eye, each.muscle) for each in case.muscles)
    if given not in _wanted(case):
        yield Fault(
            code="other_muscles",
            text="The millimetres are not of the muscles that this operation moves.",
            field="operation",
            value=f"{case.family}: {', '.join(sorted(f'{eye} {muscle}' for eye, muscle in given))}",
            allowed=" or ".join(", ".join(sorted(f"{eye} {muscle}" for eye, muscle in each)) for each in _wanted(case)),
        )


def _wanted(case: CarriedCase) -> tuple[frozenset[tuple[Eye, Muscle]], ...]:
    """The muscles of the operation, for either eye where it has a side."""
    moved = WORK[case.family].moved
    both = frozenset((eye, each.muscle) for each in moved if each.both_eyes for eye in Eye)
    single = [each.muscle for each in moved if not each.both_eyes]
    if not single:
        return (both,)
    return tuple(both | {(eye, muscle) for muscle in single} for eye in Eye)
