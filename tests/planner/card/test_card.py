"""The card is made only of a patient, a plan and a signature that belong together, and says the side in words."""

import json
import subprocess
import sys
from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.anatomy import Eye, Muscle
from planner.canonical import digest
from planner.card import Pieces, card
from planner.card.lines import OPERATIONS
from planner.codec import write
from planner.errors import Refused
from planner.signing import sign
from planner.values.option import Operation
from planner.values.statement import Level
from tests.planner import mirror
from tests.planner.signing.pieces import LEFT_MR, PATIENT, RIGHT_LR, RIGHT_MR, attestation, dose, notice, option, plan

CAUTION, NOTE = notice("steep", Level.CAUTION), notice("told", Level.NOTE)
PLAN = plan(option(LEFT_MR, RIGHT_LR, RIGHT_MR, notices=(CAUTION, NOTE)), note="Bring the small hooks.")

doses = st.lists(
    st.builds(
        dose,
        st.sampled_from(Eye),
        st.sampled_from([Muscle.MR, Muscle.LR]),
        st.sampled_from(Operation),
        st.integers(5, 24).map(lambda half: half / 2),
    ),
    unique_by=lambda each: (each.eye, each.muscle),
    min_size=1,
    max_size=4,
)


def signature_of(a_plan):
    return sign(a_plan, attestation(a_plan))


def card_of(a_plan, signature=None, patient=PATIENT, patient_now=None):
    return card(
        Pieces(
            patient=patient,
            plan=a_plan,
            signature=signature or signature_of(a_plan),
            patient_digest=digest(write(patient)),
            plan_digest=digest(write(a_plan)),
            patient_now=patient_now,
        )
    )


def codes_of_refusal(*pieces, **named):
    with pytest.raises(Refused) as refused:
        card_of(*pieces, **named)
    return [fault.code for fault in refused.value.faults]


def mirrored(an_option):
    return replace(an_option, doses=tuple(replace(each, eye=each.eye.other) for each in an_option.doses))


class TestWhatItSays:
    def test_who_the_patient_is(self):
        made = card_of(PLAN)

        assert (made.full_name, made.born_on, made.hospital_number) == ("Amina Sørensen", "2021-03-14", "KV-20417")
        assert (made.sex, made.allergies) == ("female", "latex")

    def test_the_lines_in_operating_order_right_eye_first_and_recession_before_resection(self):
        assert [(each.eye_words, each.muscle_words, each.operation_words) for each in card_of(PLAN).lines] == [
            ("RIGHT EYE", "medial rectus", "recess"),
            ("RIGHT EYE", "lateral rectus", "resect"),
            ("LEFT EYE", "medial rectus", "recess"),
        ]

    @settings(deadline=None)
    @given(doses)
    def test_within_an_eye_nothing_that_weakens_comes_after_what_tightens(self, operated):
        """Every way to weaken, to move and to tighten a muscle has its place: an operation that is added needs one."""
        weakens = {Operation.RECESS, Operation.WEAKEN, Operation.ANTERIORISE}
        tightens = {Operation.HARADA_ITO, Operation.RESECT, Operation.TUCK}
        lines = card_of(plan(option(*operated))).lines

        for first, second in combinations(lines, 2):
            assert (first.eye, second.eye) != (Eye.LEFT, Eye.RIGHT)
            if first.eye is second.eye:
                assert not (first.operation in tightens and second.operation not in tightens)
                assert not (first.operation not in weakens and second.operation in weakens)
        assert weakens | tightens | {Operation.TRANSPOSE} == set(OPERATIONS) == set(Operation)

    def test_both_figures_of_a_changed_dose(self):
        (line,) = (each for each in card_of(PLAN).lines if each.surgeon_changed)

        assert (line.mm, line.table_mm) == (5.0, 5.5)

    @pytest.mark.parametrize(
        ("operated", "words"),
        [
            ((RIGHT_MR, RIGHT_LR), "RIGHT EYE"),
            ((LEFT_MR,), "LEFT EYE"),
            ((LEFT_MR, RIGHT_MR), "BOTH EYES"),
        ],
    )
    def test_the_eye_or_eyes_in_words(self, operated, words):
        assert card_of(plan(option(*operated))).eyes_words == words

    def test_every_notice_of_the_plan(self):
        assert card_of(PLAN).notices == PLAN.option.notices

    def test_what_it_answers_and_what_is_expected_to_remain(self):
        made = card_of(PLAN)

        assert made.deviation_words == "Esodeviation 40 Δ at distance with correction"
        assert made.expected_words == "Expected to remain: esodeviation 2 Δ"

    def test_an_expected_overcorrection_by_its_own_name(self):
        over = replace(PLAN, option=replace(PLAN.option, expected_residual_pd=-4.0))

        assert card_of(over).expected_words == "Expected to remain: exodeviation 4 Δ"

    def test_where_it_comes_from_and_who_answers_for_it(self):
        made, signature = card_of(PLAN), signature_of(PLAN)

        assert (made.table, made.engine_version, made.examined_on) == (PLAN.table, "1.0.0", "2026-11-20")
        assert (made.signer_name, made.signed_at) == (signature.signer_name, signature.signed_at)
        assert made.check_word == signature.check_word
        assert made.plan_note == "Bring the small hooks."
        assert "licensed surgeon" in made.disclaimer
        assert "limbus" in made.distances_words

    @settings(deadline=None)
    @given(doses)
    def test_the_mirrored_plan_with_mirrored_eyes_and_nothing_else_changed(self, operated):
        here = card_of(plan(option(*operated)))
        there = card_of(plan(mirrored(option(*operated))))
        swapped = mirror.mirrored(write(replace(here, check_word="", pictures=())))
        seen = write(replace(there, check_word="", pictures=()))

        assert sorted(seen.pop("lines"), key=str) == sorted(swapped.pop("lines"), key=str)
        assert seen == swapped

    @settings(deadline=None)
    @given(doses)
    def test_as_many_lines_as_doses_with_the_same_figures(self, operated):
        lines = card_of(plan(option(*operated))).lines

        assert {(each.eye, each.muscle, each.operation, each.mm, each.limbus_mm) for each in lines} == {
            (each.eye, each.muscle, each.operation, each.mm, each.limbus_mm) for each in operated
        }


class TestWhatItRefuses:
    def test_another_patient(self):
        assert codes_of_refusal(PLAN, patient=replace(PATIENT, full_name="Somebody Else")) == ["other_patient"]

    def test_another_version_of_the_same_patient(self):
        assert codes_of_refusal(PLAN, patient=replace(PATIENT, allergies="")) == ["other_patient"]

    def test_a_plan_changed_by_half_a_millimetre_after_it_was_signed(self):
        first, *rest = PLAN.option.doses
        altered = replace(PLAN, option=replace(PLAN.option, doses=(replace(first, mm=first.mm + 0.5), *rest)))

        assert codes_of_refusal(altered, signature_of(PLAN)) == ["other_plan"]

    def test_a_plan_turned_to_the_other_side_after_it_was_signed(self):
        turned = replace(PLAN, option=mirrored(PLAN.option))

        assert codes_of_refusal(turned, signature_of(PLAN))[0] == "other_plan"

    def test_a_check_word_that_is_not_the_plans(self):
        assert codes_of_refusal(PLAN, replace(signature_of(PLAN), check_word="BADO BADO")) == ["other_check_word"]

    def test_a_drawing_that_is_not_the_plan(self):
        signature = signature_of(PLAN)

        assert codes_of_refusal(PLAN, replace(signature, drawn=signature.drawn[:-1])) == ["drawing_differs"]

    def test_a_caution_that_nobody_acknowledged(self):
        assert codes_of_refusal(PLAN, replace(signature_of(PLAN), acknowledged=())) == ["caution_not_acknowledged"]

    def test_a_stop_however_it_came_to_be_signed(self):
        stopped = plan(option(RIGHT_MR, notices=(notice("never", Level.STOP),)))
        harmless = plan(option(RIGHT_MR))
        forged = replace(
            signature_of(harmless),
            plan_digest=digest(write(stopped)),
            check_word=sign(harmless, attestation(harmless, plan_digest=digest(write(stopped)))).check_word,
        )

        assert codes_of_refusal(stopped, forged) == ["plan_has_stop"]

    def test_everything_that_is_wrong_at_once(self):
        signature = replace(signature_of(PLAN), check_word="BADO BADO", drawn=(), acknowledged=())

        assert codes_of_refusal(PLAN, signature, patient=replace(PATIENT, full_name="Somebody Else")) == [
            "other_patient",
            "other_check_word",
            *["drawing_differs"] * 3,
            "caution_not_acknowledged",
        ]


def test_the_value_is_made_without_reportlab():
    script = (
        "import sys, json; sys.modules['reportlab'] = None; import planner.card;"
        "print(json.dumps([name for name in sys.modules if name.startswith('reportlab.')]))"
    )
    ran = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)

    assert json.loads(ran.stdout) == []
