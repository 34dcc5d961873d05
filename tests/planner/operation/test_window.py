"""When an adjustable suture can be adjusted follows from when it was tied and from the last block."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.codec import read
from planner.errors import Refused
from planner.operation.window import statements, window
from planner.provenance import Mark
from planner.records.operation import OperationRecord
from planner.records.practice import FigureName
from planner.setup.figures import DEFINITIONS
from tests.planner.operation.theatre import ESO_40, drafted

TIED = "2026-11-25T10:00:00+01:00"


def of(**times):
    return window(read(OperationRecord, drafted(ESO_40) | times))


def said(**fields):
    record = read(OperationRecord, drafted(ESO_40) | {"tied_at": TIED, "block_at": TIED} | fields)
    return {each.code: each for each in statements(record)}


@pytest.mark.check_value
def test_after_a_block_it_waits_six_hours_and_is_done_within_a_day():
    """Common practice of the trade: at least 6 hours after a local block. From memory: within 24 of the tying."""
    found = of(tied_at=TIED, block_at="2026-11-25T09:30:00+01:00")

    assert (found.earliest_at, found.latest_at) == ("2026-11-25T15:30:00+01:00", "2026-11-26T10:00:00+01:00")


def test_without_a_block_it_waits_for_the_patient_alone():
    assert of(tied_at=TIED).earliest_at == TIED


def test_without_an_adjustable_suture_there_is_no_window():
    assert of() is None


def test_the_times_are_said_in_the_zone_of_the_tying():
    found = of(tied_at=TIED, block_at="2026-11-25T08:30:00+00:00")

    assert found.earliest_at == "2026-11-25T15:30:00+01:00"


@given(st.integers(-12 * 60, 12 * 60), st.integers(3, 48))
def test_the_window_never_ends_before_it_begins(minutes, block_wait_h):
    tied_at = datetime.fromisoformat(TIED)
    block_at = datetime.fromtimestamp(tied_at.timestamp() + 60 * minutes, tz=tied_at.tzinfo).isoformat()
    found = of(tied_at=TIED, block_at=block_at, block_wait_h=block_wait_h)

    assert tied_at <= datetime.fromisoformat(found.earliest_at) <= datetime.fromisoformat(found.latest_at)
    assert datetime.fromisoformat(found.latest_at) >= tied_at + timedelta(hours=24)


@pytest.mark.parametrize(("hours", "mark"), [(6, Mark.COMMON_PRACTICE), (12, Mark.CLINICS_OWN)])
def test_every_limit_says_where_it_comes_from(hours, mark):
    marks = {code: each.provenance.mark for code, each in said(block_wait_h=hours).items()}

    assert marks == {
        "wait_for_block": mark,
        "adjust_within": Mark.FROM_MEMORY,
        "adjust_awake": Mark.COMMON_PRACTICE,
    }


@pytest.mark.parametrize(("hours", "is_said"), [(23, False), (24, True), (25, True)])
def test_a_wait_that_outlasts_the_usual_time_is_said(hours, is_said):
    assert ("wait_is_longer" in said(block_wait_h=hours)) is is_said


def test_a_record_from_before_the_clinics_wait_waits_as_is_usual():
    old = drafted(ESO_40)

    assert "block_wait_h" in old
    del old["block_wait_h"]
    assert read(OperationRecord, old).block_wait_h == DEFINITIONS[FigureName.ADJUST_AFTER_BLOCK_H].usual


def test_a_record_may_wait_as_long_as_a_practice_may_say():
    within = DEFINITIONS[FigureName.ADJUST_AFTER_BLOCK_H].within

    for hours in (within.low, within.high):
        assert read(OperationRecord, drafted(ESO_40) | {"block_wait_h": int(hours)}).block_wait_h == hours
    for hours in (within.low - 1, within.high + 1):
        with pytest.raises(Refused, match="outside the allowed range"):
            read(OperationRecord, drafted(ESO_40) | {"block_wait_h": int(hours)})
