"""What a choice asks for, as a decision table: each caution where it holds, and gone on the other side of its limit."""

import pytest

from planner.records.practice import Item
from tests.planner.setup.prepared import BOTH_EYES, CHILD, codes, sheet

REASON = "The surgeon and the team agreed on it."
AVOIDED = {"avoid_general": True}
READY = {"cooperation": "yes", "sedation_team": True}
RECESSED_ALONE = "recess-both-mr"


def chosen(item, choice, **given):
    return given | {"overrides": [{"item": item, "choice": choice, "reason": REASON}]}


BLOCK = chosen("anaesthesia", "block")
DROPS = chosen("anaesthesia", "drops")


@pytest.mark.parametrize(
    ("item", "code", "holds", "ends"),
    [
        ("magnification", "microscope_both_eyes", chosen("magnification", "microscope", option=BOTH_EYES), {}),
        ("anaesthesia", "heart_reflex", {}, None),
        ("anaesthesia", "relaxant_and_ductions", {}, BLOCK),
        ("anaesthesia", "malignant_hyperthermia", {}, BLOCK),
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
