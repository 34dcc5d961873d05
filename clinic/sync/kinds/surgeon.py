"""Whose work a record of theatre is: the account's own, or another surgeon's who is said and known here.

An assistant may write for the surgeon, and then both names stand in the record. Codes: ``recorder_differs``,
``surgeon_unknown``.
"""

from __future__ import annotations

from collections.abc import Collection

from clinic.sync.result import Rejected
from clinic.sync.sender import Sender
from planner.records.operation import Adjustment, OperationRecord

Written = OperationRecord | Adjustment


def check_recorder(body: Written, sender: Sender) -> None:
    """Nobody writes in another person's name: the name of the account is the surgeon's, or it says who wrote."""
    if (body.recorded_by or body.surgeon_name) != sender.full_name:
        field = "recorded_by" if body.recorded_by else "surgeon_name"
        text = "The name is not the name of the account. Who writes for another surgeon is named beside that one."
        raise Rejected("recorder_differs", text, field=f"body.{field}")


def check_surgeon(body: Written, known: Collection[str]) -> None:
    """Who operated is the one who wrote, or a surgeon whom the records here already name."""
    if body.recorded_by and body.surgeon_name != body.recorded_by and body.surgeon_name not in known:
        text = "Only for the surgeon who signed, or whom the record already names, can somebody else write this down."
        raise Rejected("surgeon_unknown", text, field="body.surgeon_name")
