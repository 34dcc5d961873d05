"""When an adjustable suture can be adjusted.

The wait after a local block is the one of the set-up sheet: the record carries it as the clinic's practice had it when
the record was begun, so that sheet, record and timer name one time.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from planner.provenance import Mark, Provenance
from planner.records.operation import OperationRecord, Window
from planner.records.practice import FigureName
from planner.setup.figures import DEFINITIONS, PRACTICE
from planner.values.statement import Statement

LATEST_HOURS = 24

OWN = Provenance(mark=Mark.CLINICS_OWN, source="the wait after a block, as it was set when the record was begun")
LATEST = Provenance(
    mark=Mark.FROM_MEMORY,
    source="standard teaching: a suture is usually adjusted within 24 hours, before the muscle holds by itself",
)
AWAKE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="a patient must be awake and able to fix a target, whatever the clock says"
)


def window(record: OperationRecord) -> Window | None:
    """From the tying, or so long after a block, to a day after the tying or as long as is waited; None untied."""
    if record.tied_at is None:
        return None
    try:
        return _counted(datetime.fromisoformat(record.tied_at), record.block_at, record.block_wait_h)
    except OverflowError:
        return None


def wait_provenance(record: OperationRecord) -> Provenance:
    """Common practice of the trade, or the clinic's own where it waits otherwise."""
    is_usual = record.block_wait_h == DEFINITIONS[FigureName.ADJUST_AFTER_BLOCK_H].usual
    return PRACTICE if is_usual else OWN


def _counted(tied_at: datetime, block_at: str | None, block_wait_h: int) -> Window:
    earliest_at = tied_at
    if block_at is not None:
        free_at = datetime.fromisoformat(block_at) + timedelta(hours=block_wait_h)
        earliest_at = max(tied_at, free_at.astimezone(tied_at.tzinfo))
    latest_at = max(tied_at + timedelta(hours=LATEST_HOURS), earliest_at)
    return Window(earliest_at=_seconds(earliest_at), latest_at=_seconds(latest_at))


def statements(record: OperationRecord) -> Iterator[Statement]:
    """Why these times."""
    if record.tied_at is None:
        return
    if record.block_at is not None:
        hours = record.block_wait_h
        text = f"Not before {hours} hours after the local block: an eye that cannot move cannot be judged."
        facts = {"hours": float(hours)}
        yield Statement(code="wait_for_block", text=text, provenance=wait_provenance(record), facts=facts)
    text = f"Usually within {LATEST_HOURS} hours of the tying."
    yield Statement(code="adjust_within", text=text, provenance=LATEST, facts={"hours": float(LATEST_HOURS)})
    found = window(record)
    if found and found.earliest_at == found.latest_at:
        text = f"The wait after the block is not over within {LATEST_HOURS} hours: adjust as soon as it is."
        yield Statement(code="wait_is_longer", text=text, provenance=wait_provenance(record), facts={})
    text = "Adjust only when the patient is awake and fixes steadily."
    yield Statement(code="adjust_awake", text=text, provenance=AWAKE, facts={})


def _seconds(moment: datetime) -> str:
    return moment.isoformat(timespec="seconds")
