"""A check goes step by step to its end, or to a stop; nothing passes over one that may not be passed over."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner import checks
from planner.checks.agenda import agenda
from planner.errors import Refused
from planner.records.check_item import Phase, TeamRole
from planner.records.theatre_check import CardState, Entry, GoingOn, Outcome, TeamMember
from planner.values.checks import Effect
from tests.planner.checks.pieces import NURSE, OWN, begun, entered, honest, until

SURGEON_SAYS = GoingOn(surgeon="Mira Example", reason="Not needed for a muscle.")


def codes(check):
    with pytest.raises(Refused) as refused:
        checks.follow(check)
    return [fault.code for fault in refused.value.faults]


@pytest.mark.parametrize("phase", list(Phase))
def test_an_honest_check_passes_and_counts_its_items(phase):
    check = begun(phase)
    numbers = []
    while step := checks.follow(check).step:
        numbers.append(checks.follow(check).number)
        check = entered(check, honest(step, check))

    assert checks.follow(check).outcome is Outcome.PASSED
    assert sorted(set(numbers)) == {Phase.SIGN_IN: [*range(1, 8)], Phase.TIME_OUT: [*range(8, 15)]}.get(
        phase, [*range(15, 20)]
    )


def test_an_item_of_the_clinics_own_is_asked_at_the_end_of_its_phase_and_counted():
    check = until(begun(Phase.TIME_OUT, local=(OWN,)), f"local-{OWN.record_id}")
    progress = checks.follow(check)

    assert (progress.number, progress.count, progress.step.aloud) == (15, 20, "Is the bed locked?")
    stopped = checks.follow(entered(check, Entry(step=progress.step.id, answer="stops")))
    assert stopped.stop.text == "Bed: Not locked."


@pytest.mark.parametrize("phase", list(Phase))
def test_every_answer_that_stops_stops_and_only_some_may_be_passed_over_by_the_surgeon(phase):
    for place in agenda(begun(phase)):
        for answer in place.step.answers:
            if answer.effect is not Effect.STOP:
                continue
            check = until(begun(phase), place.step.id)
            stopped = checks.follow(entered(check, Entry(step=place.step.id, answer=answer.value)))
            assert (stopped.outcome, stopped.stop.code) == (Outcome.STOPPED, "answer_stops")

            going_on = entered(check, Entry(step=place.step.id, answer=answer.value, going_on=SURGEON_SAYS))
            if answer.surgeon_may:
                progress = checks.follow(going_on)
                assert progress.outcome is not Outcome.STOPPED
                assert "Mira Example goes on: Not needed for a muscle." in progress.told[-1]
            else:
                assert codes(going_on) == ["going_on_refused"]


def test_no_reason_passes_over_a_comparison():
    for step_id, facts in {
        "wristband": {"hospital_number": "1", "born_on": "2021-03-14"},
        "paper": {"check_word": "BADO LIRE"},
        "mark": {"marked": "left"},
    }.items():
        check = entered(until(begun(), step_id), Entry(step=step_id, going_on=SURGEON_SAYS, **facts))

        assert codes(check) == ["going_on_refused"]


@pytest.mark.parametrize(
    ("state", "code"), [(CardState.REPLACED, "card_replaced"), (CardState.TAKEN_BACK, "card_taken_back")]
)
def test_a_card_that_is_void_stops_before_anybody_and_after_everything(state, code):
    for check in (begun(card=state, first=None, second=None), until(begun())):
        progress = checks.follow(entered(begun(card=state), *check.entries))

        assert (progress.outcome, progress.stop.code, progress.stop.step) == (Outcome.STOPPED, code, "")


def test_a_signature_of_another_plan_stops():
    assert checks.follow(begun(plan_digest="0" * 64)).stop.code == "card_unfit"


@pytest.mark.parametrize("name", ["Nia Example", "nia  EXAMPLE", "NiaExample", "Nia\u00a0Example", "Nia\u200b Example"])
def test_the_second_person_is_somebody_else(name):
    assert codes(begun(second=TeamMember(name=name, role=TeamRole.SURGEON))) == ["same_person"]


def test_a_name_is_the_same_however_its_letters_are_composed():
    first = TeamMember(name="Zo\u00eb Example", role=TeamRole.NURSE)

    assert codes(begun(first=first, second=replace(first, name="zoe\u0308 example"))) == ["same_person"]
    assert checks.follow(begun(first=first, second=replace(first, name="Zoe Example"))).step


@pytest.mark.parametrize("people", [{"first": None}, {"second": None}])
def test_both_people_are_named_before_anything_is_asked(people):
    assert codes(begun(**people)) == ["people_missing"]
    assert checks.follow(begun(first=NURSE)).step


def test_no_step_is_passed_over_or_answered_out_of_turn():
    assert codes(entered(begun(), Entry(step="paper", check_word="BADO LIRE"))) == ["step_differs"]
    assert codes(entered(until(begun()), Entry(step="more"))) == ["step_differs"]


def test_nothing_is_entered_after_a_stop():
    wrong = Entry(step="wristband", hospital_number="1", born_on="2021-03-14")

    assert codes(entered(begun(), wrong, Entry(step="paper", check_word="BADO LIRE"))) == ["after_stop"]


def test_an_answer_must_be_one_of_those_shown_and_have_its_words():
    check = until(begun(), "allergy")

    assert codes(entered(check, Entry(step="allergy", answer="perhaps"))) == ["answer_unknown"]
    assert codes(entered(check, Entry(step="allergy", answer="another"))) == ["words_missing"]


@given(st.sampled_from(list(Phase)), st.integers(0, 30))
def test_an_unfinished_check_is_neither_passed_nor_stopped(phase, count):
    check = until(begun(phase))
    cut = check.entries[: min(count, len(check.entries) - 1)]

    assert checks.follow(entered(begun(phase), *cut)).outcome is None
