"""Two records of one operation are never merged: what they agree on is known, what they differ in is not."""

import json

from planner import desk
from planner.canonical import digest
from planner.records.examination import PastOperation
from tests.planner.operation.theatre import ESO_40, IDS, SURGEON, done, drafted, with_muscle

ONE = drafted(ESO_40)
OTHER = with_muscle(ONE, "left", "MR", done=done("recess", 5.0), reason="Thin sclera.")


def ask(name, **fields):
    return json.loads(desk.answer(json.dumps({"ask": name, **fields})))["answer"]


def adjustment(of, mm):
    return {
        "schema": 1,
        "operation_id": IDS["operation"],
        "operation_digest": digest(of),
        "adjusted_at": "2026-11-25T16:00:00+01:00",
        "surgeon_name": SURGEON,
        "before": [{"range": "distance", "horizontal_pd": 8}],
        "moved": [{"eye": "left", "muscle": "MR", "way": "loosen", "mm": mm}],
        "after": [{"range": "distance", "horizontal_pd": 0}],
    }


def left(operations, adjustments=()):
    answer = ask("previous_operations", operations=list(operations), adjustments=list(adjustments))
    return {(each["previous"]["eye"], each["previous"]["muscle"]): each for each in answer}


def facts(each):
    return each["previous"]["operation"], each["previous"]["mm"], each["previous"]["year"]


def test_what_both_say_is_known_and_said_to_be_in_both():
    found = left([ONE, OTHER])[("right", "MR")]

    assert facts(found) == ("recess", 5.5, 2026)
    assert found["text"].endswith("2 records of this operation say so.")


def test_what_they_differ_in_is_not_known_and_both_are_said():
    found = left([ONE, OTHER])[("left", "MR")]

    assert facts(found) == (PastOperation.UNKNOWN, None, 2026)
    assert found["text"] == (
        "Left eye, medial rectus: 2 records of this operation differ, and nobody has settled which is right: "
        "recession of 5.5 mm or recession of 5 mm."
    )


def test_a_muscle_that_one_of_them_left_out_is_not_known():
    without = with_muscle(ONE, "left", "MR", done=None, reason="Left out.")

    assert facts(left([without, ONE])[("left", "MR")]) == (PastOperation.UNKNOWN, None, 2026)


def test_the_order_in_which_they_arrived_decides_nothing():
    one, other = left([ONE, OTHER]), left([OTHER, ONE])

    assert {key: facts(each) for key, each in one.items()} == {key: facts(each) for key, each in other.items()}


def test_two_adjustments_of_one_operation_are_not_settled_either():
    found = left([ONE], [adjustment(ONE, 1), adjustment(ONE, 2)])

    assert facts(found[("left", "MR")]) == (PastOperation.UNKNOWN, None, 2026)
    assert "recession of 6.5 mm, adjusted or recession of 7.5 mm, adjusted" in found[("left", "MR")]["text"]


def test_operations_by_two_signatures_are_two_operations():
    later = ONE | {"signature_id": IDS["patient"], "operated_on": "2026-12-20"}
    answer = ask("previous_operations", operations=[ONE, later])

    assert [each["operated_on"] for each in answer] == ["2026-11-25"] * 2 + ["2026-12-20"] * 2
