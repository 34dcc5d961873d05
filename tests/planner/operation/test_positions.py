"""A later examination knows what was done: the muscles as operations and adjustments left them."""

import json

import pytest

from planner.canonical import digest
from planner.codec import read
from planner.operation import Done, earlier_muscles
from planner.proposal import propose
from planner.records.case import Case
from planner.records.operation import Adjustment, OperationRecord
from tests.planner.examined import straight
from tests.planner.operation.theatre import ESO_40, IDS, ONE_EYE_40, SURGEON, done, drafted, with_muscle


def left_by(record, *moved):
    adjustment = {
        "schema": 1,
        "operation_id": IDS["operation"],
        "operation_digest": digest(record),
        "adjusted_at": "2026-11-25T17:00:00+01:00",
        "surgeon_name": SURGEON,
        "before": [{"range": "distance", "horizontal_pd": 8}],
        "moved": list(moved),
        "after": [{"range": "distance", "horizontal_pd": 2}],
    }
    both = Done(operation=read(OperationRecord, record), adjustment=read(Adjustment, adjustment) if moved else None)
    return {(each.previous.eye, each.previous.muscle): each for each in earlier_muscles([both])}


def moved(way, mm, **more):
    return {"eye": "left", "muscle": "MR", "way": way, "mm": mm, **more}


def test_what_was_done_counts_not_what_was_planned():
    found = left_by(with_muscle(drafted(ESO_40), "left", "MR", done=done("recess", 4.5), reason="thin"))

    assert [(each.previous.operation, each.previous.mm, each.previous.year) for each in found.values()] == [
        ("recess", 5.5, 2026),
        ("recess", 4.5, 2026),
    ]


@pytest.mark.parametrize(("way", "mm", "final_mm", "limbus_mm"), [("loosen", 1.5, 7.0, 12.5), ("tighten", 2, 3.5, 9.0)])
def test_an_adjustment_moves_the_final_place(way, mm, final_mm, limbus_mm):
    found = left_by(with_muscle(drafted(ESO_40), "left", "MR", limbus_mm=11.0), moved(way, mm))["left", "MR"]

    assert found.adjusted
    assert (found.previous.mm, found.limbus_mm) == (final_mm, limbus_mm)


def test_loosening_a_resection_takes_from_it():
    record = with_muscle(drafted(ONE_EYE_40), "right", "LR", done=done("resect", 6.0), reason="thin")
    found = left_by(record, {"eye": "right", "muscle": "LR", "way": "loosen", "mm": 1})

    assert found["right", "LR"].previous.mm == 5.0


def test_a_measured_place_goes_before_a_computed_one():
    record = with_muscle(drafted(ESO_40), "left", "MR", limbus_mm=11.0)

    assert left_by(record, moved("loosen", 1, limbus_mm=12.5))["left", "MR"].limbus_mm == 12.5


def test_a_muscle_that_was_left_out_was_not_operated():
    assert ("left", "MR") not in left_by(with_muscle(drafted(ESO_40), "left", "MR", done=None, reason="stopped"))


def test_a_lost_muscle_is_told_without_a_figure():
    record = drafted(ESO_40) | {"complications": [{"complication": "lost muscle", "eye": "left", "muscle": "MR"}]}
    found = left_by(record)["left", "MR"]

    assert (found.previous.operation, found.previous.mm) == ("other", None)
    assert "was lost" in found.text


def test_a_muscle_found_missing_and_not_operated_is_told():
    found = left_by(with_muscle(drafted(ESO_40), "left", "MR", done=None, state="missing", reason="not found"))

    assert found["left", "MR"].previous.operation == "other"
    assert "Found missing" in found["left", "MR"].text


def test_the_engine_then_sees_muscles_that_were_operated_before():
    previous = [each.previous for each in left_by(drafted(ESO_40)).values()]
    body = {"schema": 1, "examined_on": "2027-03-01", "readings": [straight(25)]}
    body["previous_operations"] = [json.loads(json.dumps(vars(each))) for each in previous]
    proposal = propose(read(Case, {"schema": 1, "examination": body, "table": "wright-after-parks"}))
    again = next(option for option in proposal.options if option.id == "recess-both-mr")

    assert {notice.code for notice in again.notices} >= {"operated_muscle-left-mr", "operated_muscle-right-mr"}
    assert {"reserve_exceeded-left-mr", "reserve_exceeded-right-mr"} <= {notice.code for notice in again.notices}
