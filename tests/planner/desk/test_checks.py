"""The desk leads through a check as the phone asks for it."""

import json

from planner.codec import write
from planner.desk import answer
from tests.planner.checks.pieces import begun, until


def ask(name, **fields):
    return json.loads(answer(json.dumps({"ask": name, **fields})))


def as_asked(check):
    """A round as the phone sends it: without the digest, which the desk makes."""
    fields = write(check)
    del fields["plan_digest"]
    return fields


def test_the_next_step_is_told_and_the_end_is_closed():
    assert ask("follow_check", **as_asked(begun()))["answer"]["step"]["id"] == "wristband"

    closed = ask(
        "close_check",
        round=as_asked(until(begun())),
        signature_id="0190a0b0-0000-7000-8000-000000000001",
        after=None,
        closed_at="2026-11-25T10:00:00+01:00",
    )
    assert closed["answer"]["outcome"] == "passed"


def test_an_altered_plan_does_not_fit_its_signature():
    fields = as_asked(begun())
    fields["plan"]["option"]["doses"][0]["mm"] = 9

    assert ask("follow_check", **fields)["answer"]["stop"]["code"] == "card_unfit"


def test_what_is_no_round_is_refused_with_its_field():
    assert ask("follow_check", plan="none")["faults"]
    assert ask("close_check", round=[1])["faults"]
    assert {fault["field"] for fault in ask("close_check", round={"plan": {}})["faults"]} >= {"round.plan.schema"}
