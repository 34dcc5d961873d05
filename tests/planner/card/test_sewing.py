"""Suture and needle are one truth: what the set-up sheet says stands on the card, with the reason on both."""

from dataclasses import replace

import pytest

from planner.canonical import digest
from planner.card.lines import card_lines
from planner.codec import read, write
from planner.provenance import Mark
from planner.records.practice import Practice
from planner.records.set_up import NOTHING_WISHED, Override, SetUp
from planner.setup import set_up, sewing
from planner.values.option import Operation
from tests.planner.setup.prepared import ADULT, ON, patient, planned
from tests.planner.signing.pieces import RIGHT_LR, RIGHT_MR

REASON = "Scarred conjunctiva, slow healing before."
INSTEAD = "the surgeon's choice in place of:"
DEEP = Override(item="needle", choice="spatula_half", reason="A deep orbit, no room to swing the needle.")
STAYING = Override(item="suture", choice="staying", reason=REASON)
HOUSE = read(
    Practice,
    {
        "schema": 1,
        "decided_by": "Dr Roan",
        "reason": "What the store holds this year.",
        "choices": [{"item": "suture", "choice": "monofilament_absorbed"}],
    },
)


def prepared(*overrides, plan=None):
    body = digest(write(plan or planned()))
    return SetUp(plan_id="0190a0b0-0000-7000-8000-000000000003", plan_digest=body, on=ON, overrides=overrides)


def sutures(set_up_record=None, practice=None, doses=(RIGHT_MR, RIGHT_LR)):
    made = sewing(planned(), ADULT, set_up_record, practice)
    return [[each.text for each in line.sutures] for line in card_lines(doses, made)]


def test_a_set_up_by_the_rules_alone_leaves_the_cards_own_words():
    assert (
        sutures(prepared())
        == sutures()
        == sutures(
            None, read(Practice, write(HOUSE) | {"choices": [{"item": "suture", "words": "Soak it in saline first."}]})
        )
    )


def test_the_surgeons_choice_and_reason_stand_on_every_muscle_that_is_sewn_to_sclera():
    for texts in sutures(prepared(STAYING, DEEP)):
        assert texts == [
            "Not absorbable, 6-0; spatula needle, half a circle, at each end; locked at both edges of the tendon.",
            f"Suture to sclera: {INSTEAD} Braided, coated, absorbable (polyglycolic acid type). Reason: {REASON}",
            f"Needle for sclera: {INSTEAD} Spatula needle, three eighths of a circle. Reason: {DEEP.reason}",
        ]


@pytest.mark.parametrize(("record", "practice"), [((STAYING, DEEP), None), ((STAYING,), HOUSE), ((), HOUSE)])
def test_card_and_sheet_say_the_same_words_and_reasons(record, practice):
    sheet = set_up(
        patient(),
        planned(),
        patient_digest=digest(write(patient())),
        plan_digest=digest(write(planned())),
        signature=None,
        on=ON,
        wishes=NOTHING_WISHED,
        overrides=record,
        practice=practice,
    )
    told = " ".join(sutures(prepared(*record), practice)[0]).casefold()
    items = [each for each in sheet.items if each.item in {"suture", "needle"}]

    assert all(each.choice_words.casefold() in told for each in items)
    assert all(each.override_reason.casefold() in told for each in items)


def test_the_clinics_own_suture_is_marked_as_the_clinics_own():
    made = sewing(planned(), ADULT, None, HOUSE)
    (first, *_), *_ = [line.sutures for line in card_lines((RIGHT_MR,), made)]

    assert first.text.startswith("Single thread, absorbable, 6-0;")
    assert first.provenance.mark is Mark.CLINICS_OWN


@pytest.mark.parametrize("operation", [Operation.TUCK, Operation.HARADA_ITO, Operation.WEAKEN])
def test_what_is_not_sewn_to_sclera_keeps_its_own_suture(operation):
    dose = replace(RIGHT_MR, operation=operation)

    assert sutures(prepared(STAYING), doses=(dose,)) == sutures(doses=(dose,))


@pytest.mark.parametrize("needle", ["cutting", "reverse_cutting"])
def test_a_forbidden_needle_is_never_printed_as_prepared(needle):
    texts = sutures(prepared(Override(item="needle", choice=needle, reason="The only one there is.")))[0]

    assert "spatula needle, three eighths of a circle, at each end" in texts[0]
    assert texts[-1].startswith("What was prepared is refused, and this stands in its place: A ")
    assert "never for sclera" in texts[-1]
