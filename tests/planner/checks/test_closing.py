"""A closed check is a record whose outcome anybody can work out again."""

from dataclasses import replace

import pytest

from planner import checks
from planner.checks import Closing
from planner.checks.round import AlsoSaid
from planner.codec import read_body, write
from planner.errors import Refused
from planner.records.check_item import Phase
from planner.records.theatre_check import CardState, Entry, Outcome
from tests.planner.checks.pieces import RECORD_ID, begun, entered, until

SIGNATURE_ID = "0190a0b0-0000-7000-8000-000000000001"


def closing(check, **facts):
    known = {"round": check, "signature_id": SIGNATURE_ID, "closed_at": "2026-11-25T10:00:00+01:00"}
    return checks.close(Closing(**known | facts))


def codes(work, *arguments, **facts):
    with pytest.raises(Refused) as refused:
        work(*arguments, **facts)
    return [fault.code for fault in refused.value.faults]


def verify(body, check):
    checks.verify(body, named(check))


def named(check, **facts):
    pieces = {name: getattr(check, name) for name in ("patient", "plan", "plan_digest", "signature")}
    return checks.Named(**pieces | facts)


STOPPED = entered(begun(), Entry(step="wristband", hospital_number="1", born_on="2021-03-14"))


def test_a_passed_check_names_what_it_was_about_and_keeps_all_that_was_entered():
    check = until(begun())
    body = closing(check)

    assert (body.outcome, body.stop, body.entries) == (Outcome.PASSED, None, check.entries)
    assert (body.plan_id, body.patient_id) == (check.signature.plan_id, check.plan.patient_id)
    assert read_body("theatre_check", write(body)) == body
    verify(body, check)


def test_a_stopped_check_says_why_with_every_difference():
    body = closing(STOPPED)

    assert body.outcome is Outcome.STOPPED
    assert body.stop.code == "wristband_differs"
    assert "the wristband says 1, the card says KV-20417" in body.stop.text
    verify(body, STOPPED)


def test_a_check_that_a_void_card_stopped_needs_nobody():
    check = begun(card=CardState.REPLACED, first=None, second=None)

    assert closing(check).stop.code == "card_replaced"
    verify(closing(check), check)


def test_a_check_is_verified_against_all_that_it_was_held_against():
    nothing = replace(begun().patient, allergies="")
    latex = AlsoSaid(record_id=RECORD_ID, patient=replace(nothing, allergies="latex"))
    known = until(begun(patient=nothing), "allergy")
    check = entered(replace(known, also=(latex,)), Entry(step="allergy", answer="none"))
    body = closing(check)

    assert (body.stop.code, body.also) == ("allergy_differs", (RECORD_ID,))
    checks.verify(body, named(check, also=(latex.patient,)))
    assert codes(checks.verify, body, named(check, also=(nothing,))) == ["outcome_differs"]


def test_an_unfinished_check_is_not_closed():
    assert codes(closing, until(begun(), "allergy")) == ["check_unfinished"]


def test_the_phases_follow_each_other():
    assert codes(closing, until(begun(Phase.TIME_OUT))) == ["phase_out_of_order"]
    assert codes(closing, until(begun()), after=RECORD_ID) == ["phase_out_of_order"]
    assert closing(until(begun(Phase.SIGN_OUT)), after=RECORD_ID).outcome is Outcome.PASSED


def test_a_claim_that_does_not_follow_is_seen():
    claims = [
        (replace(closing(STOPPED), outcome=Outcome.PASSED, stop=None), STOPPED),
        (replace(closing(STOPPED), stop=replace(closing(STOPPED).stop, code="mark_differs")), STOPPED),
        (replace(closing(until(begun())), outcome=Outcome.STOPPED), until(begun())),
        (replace(closing(until(begun())), entries=()), begun()),
    ]

    for body, check in claims:
        assert codes(verify, body, check) == ["outcome_differs"]


def test_a_pass_for_one_patient_is_none_for_another():
    body, check = closing(until(begun())), begun()
    other = replace(check, patient=replace(check.patient, hospital_number="KV-20418"))

    assert codes(verify, body, other) == ["after_stop"]
