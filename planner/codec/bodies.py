"""The bodies of the record kinds."""

from __future__ import annotations

from types import MappingProxyType

from planner.codec.faults import shorten
from planner.codec.reading import read
from planner.errors import Fault, Refused
from planner.records.check_item import CheckItem
from planner.records.dose_table import DoseTable
from planner.records.examination import Examination
from planner.records.follow_up import FollowUp
from planner.records.join import Join
from planner.records.notebook import Notebook
from planner.records.operating_list import OperatingList
from planner.records.operation import Adjustment, OperationRecord
from planner.records.own_results import OwnResults
from planner.records.patient import Patient
from planner.records.plan import Plan, Signature
from planner.records.practice import Practice
from planner.records.retraction import Retraction
from planner.records.set_up import SetUp
from planner.records.theatre_check import TheatreCheck

Body = (
    Patient
    | Examination
    | Plan
    | Signature
    | Retraction
    | DoseTable
    | Join
    | TheatreCheck
    | CheckItem
    | Practice
    | SetUp
    | OperatingList
    | OperationRecord
    | Adjustment
    | FollowUp
    | Notebook
    | OwnResults
)

KINDS: MappingProxyType[str, type[Body]] = MappingProxyType(
    {
        "patient": Patient,
        "examination": Examination,
        "plan": Plan,
        "signature": Signature,
        "retraction": Retraction,
        "dose_table": DoseTable,
        "join": Join,
        "theatre_check": TheatreCheck,
        "check_item": CheckItem,
        "practice": Practice,
        "set_up": SetUp,
        "operating_list": OperatingList,
        "operation": OperationRecord,
        "adjustment": Adjustment,
        "follow_up": FollowUp,
        "notebook": Notebook,
        "own_results": OwnResults,
    }
)


def read_body(kind: object, body: object) -> Body:
    """The body of a record of ``kind``; :class:`Refused` with ``unknown_kind`` or whatever :func:`read` finds."""
    if not isinstance(kind, str) or kind not in KINDS:
        raise Refused(
            Fault(
                code="unknown_kind",
                text="There is no such kind of record.",
                field="kind",
                value=shorten(kind),
                allowed=", ".join(KINDS),
            )
        )
    return read(KINDS[kind], body)
