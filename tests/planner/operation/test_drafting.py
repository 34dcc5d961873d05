"""The record is filled in from the plan, and nothing stands in its way as long as nothing differs."""

from planner.canonical import digest
from tests.planner.operation.theatre import ESO_40, drafted, reviewed


def test_every_muscle_of_the_plan_is_there_planned_and_done_alike():
    record = drafted(ESO_40)

    assert [(each["eye"], each["muscle"], each["planned"]["mm"]) for each in record["muscles"]] == [
        ("right", "MR", 5.5),
        ("left", "MR", 5.5),
    ]
    assert all(each["done"] == each["planned"] for each in record["muscles"])


def test_the_record_binds_the_plan_and_the_signature_by_what_was_stored():
    plan, signature = ESO_40
    record = drafted(ESO_40)

    assert record["plan_digest"] == digest(plan) == signature["plan_digest"]
    assert record["signature_digest"] == digest(signature)


def test_what_was_done_as_planned_is_saved_without_a_word():
    found = reviewed(ESO_40, drafted(ESO_40))

    assert found.hindrances == ()
    assert found.notices == ()
    assert {each.code for each in found.differences} == {"as_planned"}
    assert found.effect.done_residual_pd == found.effect.planned_residual_pd == 0.0
