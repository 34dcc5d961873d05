"""What a choice asks for, as a decision table: each caution where it holds, and gone on the other side of its limit."""

import pytest

from planner.card.alerts.latex import FREE
from planner.provenance import Mark
from planner.records.practice import Item
from planner.values.statement import Level
from tests.planner.setup.prepared import BOTH_EYES, CHILD, codes, patient, sheet

REASON = "The surgeon and the team agreed on it."
AVOIDED = {"avoid_general": True}
READY = {"cooperation": "yes", "sedation_team": True}
RECESSED_ALONE = "recess-both-mr"


def chosen(item, choice, **given):
    return given | {"overrides": [{"item": item, "choice": choice, "reason": REASON}]}


HYPERTHERMIA = {"malignant_hyperthermia_family": "yes"}
NO_HYPERTHERMIA = {"malignant_hyperthermia_family": "no"}
OTHER_FAMILY = patient(**HYPERTHERMIA, hospital_number="OI-0777")
THINNED, NOT_THINNED = {"anticoagulants": "apixaban 5 mg"}, {"anticoagulants": "None."}
SILENT_NOW = {"person": NOT_THINNED, "now": patient()}

BLOCK = chosen("anaesthesia", "block")
DROPS = chosen("anaesthesia", "drops")


@pytest.mark.parametrize(
    ("item", "code", "holds", "ends"),
    [
        ("magnification", "microscope_both_eyes", chosen("magnification", "microscope", option=BOTH_EYES), {}),
        ("anaesthesia", "heart_reflex", {}, None),
        ("anaesthesia", "relaxant_and_ductions", {}, BLOCK),
        ("anaesthesia", "malignant_hyperthermia", {}, BLOCK),
        ("anaesthesia", "relaxant_and_ductions", {}, {"person": HYPERTHERMIA}),
        ("anaesthesia", "malignant_hyperthermia", {}, {"person": HYPERTHERMIA}),
        ("anaesthesia", "malignant_hyperthermia", {}, {"person": NO_HYPERTHERMIA}),
        ("anaesthesia", "relaxant_and_ductions", {"person": NO_HYPERTHERMIA}, {"others": [OTHER_FAMILY]}),
        ("anaesthesia", "hyperthermia_in_the_family", {"person": HYPERTHERMIA}, {"person": NO_HYPERTHERMIA}),
        ("anaesthesia", "hyperthermia_in_the_family", BLOCK | {"person": HYPERTHERMIA}, BLOCK),
        ("anaesthesia", "hyperthermia_in_the_family", DROPS | {"person": HYPERTHERMIA}, DROPS),
        ("anaesthesia", "hyperthermia_in_the_family", {"now": patient(**HYPERTHERMIA)}, {"now": patient()}),
        ("anaesthesia", "hyperthermia_in_the_family", {"person": HYPERTHERMIA, "now": patient(**NO_HYPERTHERMIA)}, {}),
        ("anaesthesia", "hyperthermia_in_the_family", {"others": [OTHER_FAMILY]}, {"others": [patient()]}),
        ("anaesthesia", "block_and_anticoagulants", BLOCK | {"person": THINNED}, {"person": THINNED}),
        (
            "anaesthesia",
            "block_and_anticoagulants",
            BLOCK | {"now": patient(**THINNED)},
            BLOCK | {"person": NOT_THINNED},
        ),
        ("anaesthesia", "block_and_anticoagulants", BLOCK | {"others": [patient(**THINNED)]}, BLOCK),
        ("anaesthesia", "block_and_anticoagulants", BLOCK | {"person": THINNED, "now": patient(**NOT_THINNED)}, BLOCK),
        ("anaesthesia", "block_bleeding_not_asked", BLOCK, BLOCK | {"person": NOT_THINNED}),
        ("anaesthesia", "block_bleeding_not_asked", BLOCK | SILENT_NOW, BLOCK | {"now": patient(**NOT_THINNED)}),
        ("anaesthesia", "block_bleeding_not_asked", BLOCK, BLOCK | {"person": THINNED}),
        ("anaesthesia", "general_to_be_avoided", {"wishes": AVOIDED, "born_on": CHILD}, {"wishes": AVOIDED}),
        ("anaesthesia", "block_in_a_child", BLOCK | {"born_on": CHILD}, BLOCK),
        ("anaesthesia", "block_cooperation", BLOCK, BLOCK | {"wishes": READY}),
        ("anaesthesia", "drops_cooperation", DROPS, DROPS | {"wishes": READY}),
        ("anaesthesia", "drops_team", DROPS, DROPS | {"wishes": READY}),
        ("anaesthesia", "drops_and_pull", DROPS, DROPS | {"option": RECESSED_ALONE}),
        ("adjustment", "adjusting_awake", {"wishes": {"adjustable": True}, "born_on": CHILD}, {"born_on": CHILD}),
        ("adjustment", "adjusting_awake", {"wishes": {"adjustable": True, "cooperation": "no"}}, {}),
        ("adjustment", "adjust_when_awake", {"wishes": {"adjustable": True}}, {}),
        ("adjustment", "block_topped_up", {"wishes": AVOIDED | {"adjustable": True}}, {"wishes": {"adjustable": True}}),
        ("suture", "soak_the_braid", {}, chosen("suture", "staying")),
        ("suture", "staying_suture", chosen("suture", "staying"), {}),
        ("needle", "perforation", {}, None),
        ("display", "compare_check_word", {}, None),
        ("display", "paper_too", chosen("display", "tablet"), {}),
    ],
)
def test_a_caution_stands_where_it_holds_and_nowhere_else(item, code, holds, ends):
    assert code in codes(sheet(**holds).item(Item(item)).cautions)
    assert ends is None or code not in codes(sheet(**ends).item(Item(item)).cautions)


@pytest.mark.parametrize(
    ("given", "code", "says", "mark"),
    [
        ({"person": HYPERTHERMIA}, "hyperthermia_in_the_family", "volatile agents, suxamethonium", Mark.FROM_MEMORY),
        ({"person": HYPERTHERMIA}, "hyperthermia_in_the_family", "before the list is made", Mark.FROM_MEMORY),
        (BLOCK | {"person": THINNED}, "block_and_anticoagulants", "apixaban 5 mg", Mark.FROM_MEMORY),
        (BLOCK | {"person": THINNED}, "block_and_anticoagulants", "bleed behind the eye", Mark.FROM_MEMORY),
    ],
)
def test_what_a_persons_records_warn_of_is_a_caution_with_its_reason_and_its_mark(given, code, says, mark):
    (said,) = [each for each in sheet(**given).item(Item.ANAESTHESIA).cautions if each.code == code]

    assert (said.level, said.provenance.mark) == (Level.CAUTION, mark)
    assert says in said.text


@pytest.mark.parametrize(
    ("given", "is_said"),
    [
        ({"person": {"latex": "yes"}}, True),
        ({"now": patient(latex="yes")}, True),
        ({"others": [patient(latex="yes")]}, True),
        ({"person": {"latex": "yes"}, "now": patient(latex="no")}, True),
        ({"person": {"latex": "no"}}, False),
        ({}, False),
    ],
)
def test_latex_that_is_not_borne_stands_on_the_sheet_as_on_the_card(given, is_said):
    said = [each for each in sheet(**given).notices if each.code == "latex"]

    assert [(each.level, each.provenance) for each in said] == [(Level.CAUTION, FREE)] * is_said
    assert all("latex-free gloves and set-up, first on the list" in each.text for each in said)


@pytest.mark.parametrize(
    ("item", "given", "code"),
    [
        ("magnification", {"wishes": {"lost_muscle": True}}, "scar_is_free"),
        ("anaesthesia", {"wishes": AVOIDED}, "longer_than_block"),
        ("anaesthesia", {}, "block_possible"),
        ("anaesthesia", {"option": BOTH_EYES}, "one_eye_at_a_time"),
        ("anaesthesia", {}, "drops_conditions"),
        ("adjustment", {}, "hard_to_foresee"),
        ("adjustment", {"wishes": {"adjustable": True}}, "cannot_be_adjusted"),
        ("needle", {}, "deep_tissue"),
        ("display", {}, "tablet_stands"),
    ],
)
def test_what_would_change_a_choice_is_said_with_it(item, given, code):
    assert code in codes(sheet(**given).item(Item(item)).would_change)
