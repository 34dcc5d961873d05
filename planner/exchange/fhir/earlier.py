"""How files of earlier releases wrote what is written differently now, so that they still come in.

A visit was called a part of the examination made at it; now the examination is a part of the visit.
"""

from __future__ import annotations

from collections.abc import Iterable

from planner.exchange.fhir.ledger import Told
from planner.exchange.fhir.names import Made, reference
from planner.records.examination import Examination
from planner.records.follow_up import FollowUp


def as_before(made: Made, records: Iterable[Told]) -> Made:
    """The resources that were written differently."""
    found = {}
    for record in records:
        key = "Encounter", record.id
        if isinstance(record.value, Examination):
            found[key] = {name: value for name, value in made[key].items() if name != "partOf"}
        if isinstance(record.value, FollowUp) and record.value.examination_id:
            found[key] = made[key] | {"partOf": reference("Encounter", record.value.examination_id)}
    return found
