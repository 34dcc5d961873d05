"""The deviation that the options answer."""

from __future__ import annotations

from planner.errors import Fault, Refused
from planner.records.examination import Correction, Examination, Gaze, Range
from planner.thresholds import same
from planner.values.proposal import Target

FIELD = "examination.readings"


def target(examination: Examination) -> Target:
    """The horizontal deviation of the primary position at distance, measured with correction where it was.

    :class:`Refused` with ``no_primary_distance`` where that reading is missing, and with ``no_horizontal_deviation``
    where its horizontal part is zero or was not measured.
    """
    taken = [examination.reading(Gaze.PRIMARY, Range.DISTANCE, correction) for correction in Correction]
    readings = [reading for reading in taken if reading is not None]
    if not readings:
        raise Refused(
            Fault(
                code="no_primary_distance",
                text="The primary position at distance was not measured yet; the plan starts from that reading.",
                field=FIELD,
                allowed="a reading of the primary position at distance",
            )
        )
    for reading in readings:
        if reading.horizontal_pd is None:
            continue
        if same(reading.horizontal_pd, 0):
            raise Refused(_nothing_to_answer("shows no horizontal deviation, so there is none to operate for"))
        return Target(horizontal_pd=reading.horizontal_pd, reading=reading)
    raise Refused(_nothing_to_answer("has no horizontal figure yet, and the options need one"))


def _nothing_to_answer(why: str) -> Fault:
    return Fault(
        code="no_horizontal_deviation",
        text=f"The primary position at distance {why}.",
        field=FIELD,
        allowed="an eso or exo figure above zero in the primary position at distance",
    )
