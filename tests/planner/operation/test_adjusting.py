"""An adjustment belongs to an adjustable suture, and is told when it came early or late."""

import pytest

from planner.canonical import digest
from planner.codec import read
from planner.operation import review_adjustment
from planner.records.operation import Adjustment, OperationRecord
from tests.planner.operation.theatre import ESO_40, IDS, SURGEON, drafted, with_muscle

OPERATION = with_muscle(drafted(ESO_40), "left", "MR", adjustable=True) | {
    "tied_at": "2026-11-25T10:00:00+01:00",
    "block_at": "2026-11-25T09:30:00+01:00",
    "window": {"earliest_at": "2026-11-25T15:30:00+01:00", "latest_at": "2026-11-26T10:00:00+01:00"},
}
BEFORE = [{"range": "distance", "horizontal_pd": 8}]
MOVED = {"eye": "left", "muscle": "MR", "way": "loosen", "mm": 1}
AFTER = [{"range": "distance", "horizontal_pd": 2}]


def reviewed(operation=OPERATION, **fields):
    adjustment = {
        "schema": 1,
        "operation_id": IDS["operation"],
        "operation_digest": digest(operation),
        "adjusted_at": "2026-11-25T16:00:00+01:00",
        "surgeon_name": SURGEON,
        "before": BEFORE,
        **fields,
    }
    return review_adjustment(read(OperationRecord, operation), read(Adjustment, adjustment))


def test_sutures_may_be_tied_as_they_were():
    found = reviewed()

    assert (found.hindrances, found.notices) == ((), ())


def test_a_moved_suture_shows_where_the_muscle_lies_now():
    found = reviewed(moved=[MOVED], after=AFTER)

    assert found.hindrances == ()
    assert {each.previous.eye: each.previous.mm for each in found.positions} == {"right": 5.5, "left": 6.5}


@pytest.mark.parametrize(
    ("fields", "code"),
    [
        ({"moved": [MOVED]}, "after_missing"),
        ({"moved": [MOVED | {"eye": "right"}], "after": AFTER}, "not_adjustable"),
        ({"moved": [MOVED | {"way": "tighten", "mm": 6}], "after": AFTER}, "moved_past_its_start"),
        ({"adjusted_at": "2026-11-25T09:59:00+01:00"}, "adjusted_before_tied"),
    ],
)
def test_it_is_refused(fields, code):
    assert [fault.code for fault in reviewed(**fields).hindrances] == [code]


def test_an_operation_without_an_adjustable_suture_has_none_to_adjust():
    assert "not_adjustable" in [fault.code for fault in reviewed(drafted(ESO_40)).hindrances]


@pytest.mark.parametrize(
    ("adjusted_at", "codes"),
    [
        ("2026-11-25T15:29:59+01:00", ["early_adjustment"]),
        ("2026-11-25T15:30:00+01:00", []),
        ("2026-11-26T10:00:00+01:00", []),
        ("2026-11-26T10:00:01+01:00", ["late_adjustment"]),
        ("2026-11-25T14:30:00+00:00", []),
    ],
)
def test_too_early_and_too_late_are_told_and_not_refused(adjusted_at, codes):
    found = reviewed(adjusted_at=adjusted_at)

    assert ([notice.code for notice in found.notices], found.hindrances) == (codes, ())
