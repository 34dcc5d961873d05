"""When an adjustable suture can be adjusted follows from when it was tied and from the last block."""

from datetime import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.codec import read
from planner.operation.window import statements, window
from planner.provenance import Mark
from planner.records.operation import OperationRecord
from tests.planner.operation.theatre import ESO_40, drafted

TIED = "2026-11-25T10:00:00+01:00"


def of(**times):
    return window(read(OperationRecord, drafted(ESO_40) | times))


@pytest.mark.check_value
def test_after_a_block_it_waits_six_hours_and_is_done_within_a_day():
    """Common practice, from memory, verify: at least 6 hours after a local block, usually within 24 of the tying."""
    found = of(tied_at=TIED, block_at="2026-11-25T09:30:00+01:00")

    assert (found.earliest_at, found.latest_at) == ("2026-11-25T15:30:00+01:00", "2026-11-26T10:00:00+01:00")


def test_without_a_block_it_waits_for_the_patient_alone():
    assert of(tied_at=TIED).earliest_at == TIED


def test_without_an_adjustable_suture_there_is_no_window():
    assert of() is None


def test_the_times_are_said_in_the_zone_of_the_tying():
    found = of(tied_at=TIED, block_at="2026-11-25T08:30:00+00:00")

    assert found.earliest_at == "2026-11-25T15:30:00+01:00"


@given(st.integers(-12 * 60, 12 * 60))
def test_the_window_is_never_empty(minutes):
    tied_at = datetime.fromisoformat(TIED)
    block_at = datetime.fromtimestamp(tied_at.timestamp() + 60 * minutes, tz=tied_at.tzinfo).isoformat()
    found = of(tied_at=TIED, block_at=block_at)

    assert tied_at <= datetime.fromisoformat(found.earliest_at) < datetime.fromisoformat(found.latest_at)


def test_every_limit_says_that_it_is_to_be_verified():
    record = read(OperationRecord, drafted(ESO_40) | {"tied_at": TIED, "block_at": TIED})
    marks = {each.code: each.provenance.mark for each in statements(record)}

    assert marks == {
        "wait_for_block": Mark.FROM_MEMORY,
        "adjust_within": Mark.FROM_MEMORY,
        "adjust_awake": Mark.COMMON_PRACTICE,
    }
