"""When an adjustable suture can be adjusted."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from planner.provenance import Mark, Provenance
from planner.records.operation import OperationRecord, Window
from planner.values.statement import Statement

BLOCK_HOURS = 6
LATEST_HOURS = 24

BLOCK = Provenance(
    mark=Mark.FROM_MEMORY,
    source="common practice: after a local block the muscles are given at least 6 hours to work again",
)
LATEST = Provenance(
    mark=Mark.FROM_MEMORY,
    source="common practice: a suture is usually adjusted within 24 hours, before the muscle holds by itself",
)
AWAKE = Provenance(
    mark=Mark.COMMON_PRACTICE, source="a patient must be awake and able to fix a target, whatever the clock says"
)


def window(record: OperationRecord) -> Window | None:
    """From the tying, or so long after a block, to a day after the tying; None without a tying."""
    if record.tied_at is None:
        return None
    try:
        return _counted(datetime.fromisoformat(record.tied_at), record.block_at)
    except OverflowError:
        return None


def _counted(tied_at: datetime, block_at: str | None) -> Window:
    earliest_at = tied_at
    if block_at is not None:
        free_at = datetime.fromisoformat(block_at) + timedelta(hours=BLOCK_HOURS)
        earliest_at = max(tied_at, free_at.astimezone(tied_at.tzinfo))
    latest_at = tied_at + timedelta(hours=LATEST_HOURS)
    return Window(earliest_at=_seconds(earliest_at), latest_at=_seconds(latest_at))


def statements(record: OperationRecord) -> Iterator[Statement]:
    """Why these times."""
    if record.tied_at is None:
        return
    if record.block_at is not None:
        text = f"Not before {BLOCK_HOURS} hours after the local block: an eye that cannot move cannot be judged."
        yield Statement(code="wait_for_block", text=text, provenance=BLOCK, facts={"hours": float(BLOCK_HOURS)})
    text = f"Usually within {LATEST_HOURS} hours of the tying."
    yield Statement(code="adjust_within", text=text, provenance=LATEST, facts={"hours": float(LATEST_HOURS)})
    text = "Adjust only when the patient is awake and fixes steadily."
    yield Statement(code="adjust_awake", text=text, provenance=AWAKE, facts={})


def _seconds(moment: datetime) -> str:
    return moment.isoformat(timespec="seconds")
