"""What the team must know before it begins: said, asked, or newer than the signature; never silently none."""

from dataclasses import replace

import pytest

from planner.anatomy import Eye, Muscle
from planner.card.alerts import alerts
from planner.codec import write
from planner.records.diagnosis import Diagnosed, Diagnosis
from planner.records.examination import Acuity, PastOperation, PreviousOperation
from planner.records.motility import ForcedDuction, Pull
from planner.records.patient import Known
from planner.values.alert import AlertKind
from tests.planner.mirror import mirrored
from tests.planner.signing.pieces import LEFT_MR, PATIENT, RIGHT_MR, option, plan

ASKED = replace(
    PATIENT,
    allergies="",
    latex=Known.NO,
    anticoagulants="none",
    malignant_hyperthermia_family=Known.NO,
)


def found(patient=ASKED, *, now=None, doses=(RIGHT_MR,), **examined):
    made = plan(option(*doses))
    examination = replace(made.case.examination, **examined)
    return {
        each.code: each
        for each in alerts(patient, replace(made, case=replace(made.case, examination=examination)), now)
    }


class TestThePatientsRecord:
    @pytest.mark.parametrize(
        ("field", "value", "code", "kind"),
        [
            ("allergies", "", "allergies", AlertKind.ASK),
            ("allergies", "penicillin", "allergies", AlertKind.ALERT),
            ("latex", Known.UNKNOWN, "latex", AlertKind.ASK),
            ("latex", Known.YES, "latex", AlertKind.ALERT),
            ("anticoagulants", "", "anticoagulants", AlertKind.ASK),
            ("anticoagulants", "a daily tablet", "anticoagulants", AlertKind.ALERT),
            ("malignant_hyperthermia_family", Known.UNKNOWN, "hyperthermia", AlertKind.ASK),
            ("malignant_hyperthermia_family", Known.YES, "hyperthermia", AlertKind.ALERT),
        ],
    )
    def test_what_is_entered_is_said_and_what_is_not_is_asked(self, field, value, code, kind):
        assert found(replace(ASKED, **{field: value}))[code].kind is kind

    @pytest.mark.parametrize("said", ["none", "None known.", "no known allergies", "NKDA", "n.k.a.", " Nil  known "])
    def test_an_answer_that_there_is_nothing_is_told_and_warns_of_nothing(self, said):
        told = found(replace(ASKED, allergies=said))["allergies"]

        assert (told.kind, told.text) == (AlertKind.TELL, said)

    @pytest.mark.parametrize("said", ["none?", "unknown", "not asked", "none but iodine", "NKDA, nuts"])
    def test_whatever_else_was_entered_warns(self, said):
        assert found(replace(ASKED, allergies=said))["allergies"].kind is AlertKind.ALERT

    def test_none_known_is_not_said_beside_latex_that_is_not_borne(self):
        said = found(replace(ASKED, allergies="none known", latex=Known.YES))

        assert "allergies" not in said
        assert said["latex"].kind is AlertKind.ALERT

    @pytest.mark.parametrize("said", ["latex", "Nuts, LATEX gloves", "No latex allergy"])
    @pytest.mark.parametrize("known", [Known.UNKNOWN, Known.NO])
    def test_latex_among_the_allergies_warns_whatever_its_own_question_says(self, said, known):
        """Somebody who wrote that there is none is asked once more, and nobody is harmed."""
        warned = found(replace(ASKED, allergies=said, latex=known))["latex"]

        assert (warned.kind, warned.topic) == (AlertKind.ALERT, "LATEX")
        assert warned.text.startswith("Named among the allergies")

    @pytest.mark.parametrize("code", ["latex", "hyperthermia"])
    def test_a_no_says_nothing(self, code):
        assert code not in found(ASKED)


class TestTheExamination:
    def test_the_only_seeing_eye_whether_it_is_operated_on_or_not(self):
        blind_left = {"acuity_right": Acuity.SIX_6, "acuity_left": Acuity.HAND_MOVEMENTS}

        assert found(doses=(LEFT_MR,), **blind_left)["only_seeing_eye"].text == (
            "The RIGHT eye is the only seeing eye. It is not operated on: protect it."
        )
        assert "It is operated on." in found(doses=(RIGHT_MR,), **blind_left)["only_seeing_eye"].text

    @pytest.mark.parametrize(
        "known",
        [{}, {"acuity_right": Acuity.SIX_6}, {"acuity_left": Acuity.NO_LIGHT_PERCEPTION}],
        ids=["neither acuity", "one that is good", "one that is blind"],
    )
    def test_whether_an_eye_is_the_only_seeing_one_is_asked_where_an_acuity_is_missing(self, known):
        asked = found(**known)["seeing_eye"]

        assert (asked.kind, asked.topic) == (AlertKind.ASK, "Only seeing eye")

    def test_two_acuities_leave_nothing_to_ask_of_the_seeing_eye(self):
        assert "seeing_eye" not in found(acuity_right=Acuity.SIX_6, acuity_left=Acuity.SIX_9)

    def test_previous_operations_of_either_eye(self):
        done = PreviousOperation(eye=Eye.LEFT, muscle=Muscle.LR, operation=PastOperation.RECESS, mm=8.0, year=2019)

        said = found(previous_operations=(done,))

        assert said["previous-left"].text == "LEFT eye: lateral rectus recessed 8 mm (2019)."
        assert not any(code.startswith("difficult") for code in said)

    def test_a_muscle_of_the_plan_that_was_operated_before_is_expected_to_be_difficult(self):
        done = PreviousOperation(eye=Eye.RIGHT, muscle=Muscle.MR, operation=PastOperation.UNKNOWN)

        assert "scars" in found(previous_operations=(done,))["difficult-right-mr"].text

    def test_tightness_found_in_clinic_or_expected_of_the_diagnosis(self):
        pulled = ForcedDuction(eye=Eye.RIGHT, muscle=Muscle.LR, result=Pull.RESTRICTED)
        thyroid = Diagnosed(diagnosis=Diagnosis.THYROID_EYE_DISEASE)

        assert "restricted in clinic" in found(forced_ductions=(pulled,))["difficult-right-mr"].text
        assert "thyroid eye disease" in found(diagnoses=(thyroid,))["difficult-right-mr"].text
        assert "difficult-right-mr" not in found(
            diagnoses=(Diagnosed(diagnosis=Diagnosis.DUANE_SYNDROME, eye=Eye.LEFT),)
        )

    def test_every_card_says_to_tell_the_anaesthetist_before_traction(self):
        said = found()["oculocardiac_reflex"]

        assert said.kind is AlertKind.TELL
        assert "anaesthetist" in said.text


class TestNewerThanTheSignature:
    def test_an_allergy_that_became_known_after_signing_comes_first_and_is_marked(self):
        told = alerts(ASKED, plan(option(RIGHT_MR)), replace(ASKED, allergies="iodine"))

        assert (told[0].code, told[0].newer, told[0].text) == ("allergies", True, "iodine")
        assert [each.code for each in told if each.newer] == ["allergies"]

    def test_one_that_was_taken_out_stays_and_says_so(self):
        told = found(replace(ASKED, latex=Known.YES), now=ASKED)

        assert told["latex-gone"].newer
        assert told["latex-gone"].text.startswith("In the record that was signed, no longer in the present one")

    def test_latex_that_was_named_and_is_now_sure_is_not_said_to_be_gone(self):
        named = replace(ASKED, allergies="latex", latex=Known.UNKNOWN)
        told = found(named, now=replace(named, latex=Known.YES))

        assert told["latex"].newer
        assert told["latex"].text.startswith("Not borne")
        assert not any(code.endswith("-gone") for code in told)

    def test_nothing_is_newer_while_the_record_is_the_same(self):
        assert not any(each.newer for each in found(ASKED, now=ASKED).values())


class TestAnotherEntryOfThePerson:
    TWIN = replace(ASKED, full_name="Suniva Ekholm", hospital_number="OI-0777")

    def of(self, *entries, patient=ASKED, now=None):
        return alerts(patient, plan(option(RIGHT_MR)), now, entries)

    def test_what_it_warns_of_stands_before_what_was_signed_and_names_the_entry(self):
        warned = replace(self.TWIN, allergies="penicillin", latex=Known.YES)
        found = [each for each in self.of(warned) if each.entry]

        assert [(each.code, each.text, each.newer) for each in found] == [
            ("allergies-entry-1", "penicillin", False),
            ("latex-entry-1", "Not borne: latex-free gloves and set-up.", False),
        ]
        assert {each.entry for each in found} == {"Suniva Ekholm, number OI-0777"}
        assert self.of(warned)[: len(found)] == tuple(found)

    def test_it_adds_and_takes_nothing_away(self):
        silent = replace(self.TWIN, allergies="none known")
        allergic = replace(ASKED, allergies="iodine")

        assert self.of(silent, patient=allergic) == self.of(patient=allergic)

    def test_what_both_say_is_said_once(self):
        allergic = replace(ASKED, allergies="iodine")

        assert self.of(replace(self.TWIN, allergies="iodine"), patient=allergic) == self.of(patient=allergic)

    def test_what_only_the_present_version_of_this_entry_says_too_is_said_once(self):
        now = replace(ASKED, allergies="iodine")

        assert self.of(replace(self.TWIN, allergies="iodine"), now=now) == self.of(now=now)

    def test_two_other_entries_are_told_apart(self):
        codes = [
            each.code
            for each in self.of(replace(self.TWIN, allergies="iodine"), replace(self.TWIN, allergies="penicillin"))
            if each.entry
        ]

        assert codes == ["allergies-entry-1", "allergies-entry-2"]


def test_the_mirrored_patient_has_the_mirrored_alerts():
    examined = {
        "acuity_right": Acuity.SIX_6,
        "acuity_left": Acuity.HAND_MOVEMENTS,
        "previous_operations": (PreviousOperation(eye=Eye.RIGHT, muscle=Muscle.MR, operation=PastOperation.OTHER),),
    }
    turned = {
        "acuity_left": Acuity.SIX_6,
        "acuity_right": Acuity.HAND_MOVEMENTS,
        "previous_operations": (PreviousOperation(eye=Eye.LEFT, muscle=Muscle.MR, operation=PastOperation.OTHER),),
    }
    here = [write(each) for each in found(doses=(RIGHT_MR,), **examined).values()]
    there = [write(each) for each in found(doses=(LEFT_MR,), **turned).values()]

    assert sorted(there, key=str) == sorted(mirrored(here), key=str)
