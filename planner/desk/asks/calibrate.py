"""What a surgeon's own past cases say of the table, for one family of operations."""

from __future__ import annotations

from planner.calibration import calibrate
from planner.calibration.admission import Question
from planner.codec import read, write
from planner.desk.fields import Fields


def ask(fields: Fields) -> object:
    """A ``Calibration``."""
    return write(calibrate(read(Question, fields)))
