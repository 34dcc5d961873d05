"""What is entered again is compared with what was signed; every difference stops and is said in words."""

from dataclasses import replace

import pytest

from planner import checks
from planner.anatomy import Eye, Muscle
from planner.checks.round import AlsoSaid
from planner.errors import Refused
from planner.records.check_item import Phase
from planner.records.patient import Known
from planner.records.theatre_check import Consented, Entry, Marked, Outcome
from planner.values.checks import Keys
from planner.values.option import Operation
from tests.planner.checks.pieces import BOTH_EYES, ONE_EYE, PATIENT, RECORD_ID, begun, consented, entered, until
from tests.planner.signing import pieces


def after(step_id, *, phase=Phase.SIGN_IN, doses=ONE_EYE, patient=PATIENT, **facts):
    check = until(begun(phase, doses=doses, patient=patient), step_id)
    return checks.follow(entered(check, Entry(step=step_id, **facts)))


def stopped(step_id, **facts):
    progress = after(step_id, **facts)
    assert progress.outcome is Outcome.STOPPED
    assert progress.stop.step == step_id
    assert not progress.stop.surgeon_may
    return progress.stop.code, progress.stop.differences


WRISTBAND = {"hospital_number": PATIENT.hospital_number, "born_on": PATIENT.born_on}


@pytest.mark.parametrize("typed", ["20417", "KV-20417", "kv 20417", "20 417"])
def test_beside_the_birth_date_a_number_with_enough_digits_is_typed_by_its_digits(typed):
    assert checks.follow(begun()).step.keys is Keys.DIGITS
    assert after("wristband", **WRISTBAND | {"hospital_number": typed}).stop is None


@pytest.mark.parametrize("typed", ["20471", "2041", "220417", "KV", "KW-20417", "20417-B"])
def test_another_number_is_another_patient(typed):
    code, differences = stopped("wristband", **WRISTBAND | {"hospital_number": typed})

    assert code == "wristband_differs"
    assert differences == (f"Hospital number: the wristband says {typed}, the card says KV-20417.",)


def test_another_birth_date_is_another_patient_and_both_differences_are_told():
    assert stopped("wristband", **WRISTBAND | {"born_on": "2021-03-15"})[1] == (
        "Date of birth: the wristband says 15 March 2021, the card says 14 March 2021.",
    )
    assert len(stopped("wristband", hospital_number="1", born_on="1950-01-01")[1]) == 2


def test_a_number_of_few_digits_is_typed_whole():
    patient = replace(PATIENT, hospital_number="Q-17")

    assert checks.follow(begun(patient=patient)).step.keys is Keys.CHARACTERS
    assert after("wristband", patient=patient, hospital_number="q 17", born_on=PATIENT.born_on).stop is None
    assert stopped("wristband", patient=patient, hospital_number="R-17", born_on=PATIENT.born_on)


@pytest.mark.parametrize("typed", ["KV-20417", "kv20417", "KV 20 417"])
def test_the_time_out_asks_for_the_number_again_with_its_letters_for_no_birth_date_stands_beside_it(typed):
    assert checks.follow(until(begun(Phase.TIME_OUT), "wristband-again")).step.keys is Keys.CHARACTERS
    assert after("wristband-again", phase=Phase.TIME_OUT, hospital_number=typed).stop is None


@pytest.mark.parametrize("typed", ["KV-20418", "KW-20417", "20417", "KV"])
def test_another_letter_or_digit_is_another_patient_at_time_out(typed):
    assert stopped("wristband-again", phase=Phase.TIME_OUT, hospital_number=typed)[0] == "wristband_differs"


def test_a_number_without_letters_is_typed_by_its_digits_at_time_out_too():
    patient = replace(PATIENT, hospital_number="204-17")

    assert checks.follow(until(begun(Phase.TIME_OUT, patient=patient), "wristband-again")).step.keys is Keys.DIGITS
    assert after("wristband-again", phase=Phase.TIME_OUT, patient=patient, hospital_number="20417").stop is None
    assert stopped("wristband-again", phase=Phase.TIME_OUT, patient=patient, hospital_number="20418")


def test_the_check_word_is_compared_by_its_letters():
    word = begun().signature.check_word

    assert after("paper", check_word=word.lower().replace(" ", "")).stop is None
    assert stopped("paper", check_word="BADO LIRE") == (
        "check_word_differs",
        (f"Check word: the paper says BADO LIRE, the card says {word}.",),
    )


@pytest.mark.parametrize("order", [1, -1])
def test_the_consent_is_compared_in_any_order(order):
    plan = begun(doses=BOTH_EYES).plan

    assert after("consent", doses=BOTH_EYES, consented=consented(plan)[::order]).stop is None


def said(eye, muscle=Muscle.MR, operation=Operation.RECESS):
    return Consented(eye=eye, muscle=muscle, operation=operation)


def test_another_eye_in_the_consent_stops_and_says_both():
    assert stopped("consent", doses=(pieces.RIGHT_MR,), consented=(said(Eye.LEFT),)) == (
        "consent_differs",
        (
            "Only in the signed plan: recess the right medial rectus.",
            "Only in the consent: recess the left medial rectus.",
        ),
    )


@pytest.mark.parametrize(
    "consent",
    [
        (said(Eye.RIGHT),),
        (said(Eye.RIGHT), said(Eye.RIGHT, Muscle.LR)),
        (said(Eye.RIGHT), said(Eye.RIGHT, Muscle.SR, Operation.RESECT)),
        (said(Eye.RIGHT), said(Eye.RIGHT, Muscle.LR, Operation.RESECT), said(Eye.LEFT)),
    ],
    ids=["one muscle too few", "another operation", "another muscle", "one eye too many"],
)
def test_whatever_the_consent_says_differently_stops(consent):
    assert stopped("consent", consented=consent)[0] == "consent_differs"


@pytest.mark.parametrize("marked", [Marked.LEFT, Marked.BOTH, Marked.NONE])
def test_a_mark_elsewhere_than_on_the_planned_eye_stops(marked):
    code, (difference,) = stopped("mark", marked=marked)

    assert code == "mark_differs"
    assert "the signed plan is for the right eye" in difference
    assert after("mark", marked=Marked.RIGHT).stop is None


@pytest.mark.parametrize("marked", [Marked.RIGHT, Marked.LEFT, Marked.NONE])
def test_a_plan_for_both_eyes_needs_both_marked(marked):
    assert stopped("mark", doses=BOTH_EYES, marked=marked)[0] == "mark_differs"
    assert after("mark", doses=BOTH_EYES, marked=Marked.BOTH).stop is None


def test_allergies_are_compared_with_the_card():
    nothing = replace(PATIENT, allergies="")

    assert stopped("allergy", answer="none") == (
        "allergy_differs",
        ("Said: None is known. The card says: latex.",),
    )
    assert stopped("allergy", patient=nothing, answer="as_card")[0] == "allergy_differs"
    assert after("allergy", patient=nothing, answer="none").stop is None
    assert after("allergy", answer="another", words="iodine").told == ("Allergy: Another one: iodine",)


@pytest.mark.parametrize("written", ["none known", "None known.", "NKDA", "no known drug allergies"])
def test_none_known_on_the_card_is_none_known_when_it_is_said(written):
    patient = replace(PATIENT, allergies=written)

    assert after("allergy", patient=patient, answer="none").stop is None
    assert stopped("allergy", patient=patient, answer="as_card")[1] == (
        f"Said: Those on the card. The card says: {written.removesuffix('.')}.",
    )


def test_allergies_that_a_newer_record_or_another_entry_tells_are_none_that_nobody_knows_of():
    nothing = replace(PATIENT, allergies="")
    also = (AlsoSaid(record_id=RECORD_ID, patient=replace(PATIENT, allergies="chlorhexidine")),)
    check = until(begun(patient=nothing, also=also), "allergy")

    stop = checks.follow(entered(check, Entry(step="allergy", answer="none"))).stop

    assert stop.code == "allergy_differs"
    assert stop.differences == (
        "Said: None is known. The card says: no allergy is entered.",
        "A newer record, or another entry of this person, says: chlorhexidine.",
    )
    assert checks.follow(entered(check, Entry(step="allergy", answer="as_card"))).stop is None


@pytest.mark.parametrize(
    ("allergies", "card"), [("", "latex"), ("iodine", "iodine, latex"), ("Latex", "Latex"), ("none known", "latex")]
)
def test_latex_that_is_not_borne_is_an_allergy_of_the_card(allergies, card):
    patient = replace(PATIENT, allergies=allergies, latex=Known.YES)

    assert stopped("allergy", patient=patient, answer="none")[1] == (f"Said: None is known. The card says: {card}.",)
    assert after("allergy", patient=patient, answer="as_card").stop is None


@pytest.mark.parametrize("step_id", ["wristband", "paper", "consent", "mark"])
def test_a_step_left_empty_is_refused(step_id):
    with pytest.raises(Refused) as refused:
        after(step_id)

    assert refused.value.faults[0].code == "entry_missing"
