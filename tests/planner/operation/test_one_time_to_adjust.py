"""Sheet, record and adjustment name one time: a clinic that waits 12 hours after a block is told so everywhere."""

import pytest

from planner.canonical import digest
from tests.planner.desk.test_desk import answered, codes
from tests.planner.operation.theatre import IDS, ONE_EYE_40, PATIENT, SURGEON, with_muscle

BLOCK_AT, TIED_AT = "2026-11-25T08:00:00+01:00", "2026-11-25T08:40:00+01:00"
PLAN, SIGNATURE = ONE_EYE_40
SIGNED = {"plan": PLAN, "signature": SIGNATURE}
WISHES = {"adjustable": True, "avoid_general": True, "block_at": BLOCK_AT}


def waiting(hours):
    own = [{"name": "adjust_after_block_h", "value": hours}]
    return {"schema": 1, "decided_by": "Dr Fern", "reason": "Our block lasts long.", "figures": own}


def drafted(practice):
    begun = {"signature_id": IDS["signature"], "operated_on": "2026-11-25", "surgeon_name": SURGEON}
    return answered("draft_operation", **SIGNED, **begun, practice=practice)["operation"]


def operated(practice):
    """Drafted, tied under a block, with the window that the engine works out."""
    drawn = drafted(practice)
    muscle = drawn["muscles"][0]
    record = with_muscle(drawn, muscle["eye"], muscle["muscle"], adjustable=True)
    record |= {"tied_at": TIED_AT, "block_at": BLOCK_AT}
    return record | {"window": answered("review_operation", **SIGNED, operation=record)["window"]}


def adjusted_at(operation, moment):
    adjustment = {
        "schema": 1,
        "operation_id": IDS["operation"],
        "operation_digest": digest(operation),
        "adjusted_at": moment,
        "surgeon_name": SURGEON,
        "before": [{"range": "distance", "horizontal_pd": 4}],
    }
    return answered("review_adjustment", operation=operation, adjustment=adjustment)["notices"]


@pytest.mark.parametrize(
    ("practice", "earliest", "mark"),
    [
        (None, "2026-11-25T14:00:00+01:00", "common practice"),
        (waiting(12), "2026-11-25T20:00:00+01:00", "this clinic's practice"),
    ],
)
def test_sheet_and_record_count_to_the_same_moment(practice, earliest, mark):
    sheet = answered("set_up", patient=PATIENT, **SIGNED, on="2026-11-25", wishes=WISHES, practice=practice)
    record = operated(practice)
    review = answered("review_operation", **SIGNED, operation=record)
    (wait,) = [each for each in review["window_statements"] if each["code"] == "wait_for_block"]

    assert sheet["adjust_from"] == record["window"]["earliest_at"] == earliest
    assert wait["provenance"]["mark"] == mark
    assert review["hindrances"] == []


def test_an_adjustment_is_early_by_the_same_wait():
    record = operated(waiting(12))
    (early,) = adjusted_at(record, "2026-11-25T19:59:59+01:00")

    assert early["code"] == "early_adjustment"
    assert "within 12 hours" in early["text"]
    assert early["provenance"]["mark"] == "this clinic's practice"
    assert adjusted_at(record, "2026-11-25T20:00:00+01:00") == []


def test_the_record_keeps_its_first_form_where_the_wait_is_as_usual():
    assert "block_wait_h" not in drafted(None)
    assert "block_wait_h" not in drafted(waiting(6))
    assert drafted(waiting(12))["block_wait_h"] == 12


def test_a_practice_that_cannot_be_is_refused_with_its_field():
    assert codes(
        "draft_operation",
        **SIGNED,
        signature_id=IDS["signature"],
        operated_on="2026-11-25",
        surgeon_name=SURGEON,
        practice=waiting(49),
    ) == ["out_of_range"]
