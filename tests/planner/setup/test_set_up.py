"""The set-up sheet as a decision table: who, what is wished, and what stands with which reason."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner import setup
from planner.codec import read, write
from planner.errors import Refused
from planner.provenance import Mark
from planner.records.motility import Duction
from planner.records.practice import Item, Practice
from planner.setup.register import BY_ITEM, RULES
from planner.values.statement import Level
from tests.planner.mirror import mirrored
from tests.planner.patients import before
from tests.planner.setup.prepared import BOTH_EYES, CHILD, ON, ONE_EYE, codes, sheet
from tests.planner.strategies import values_of

REASON = "The surgeon and the team agreed on it."
OPERATED = {"previous_operations": (before("right", "LR", "resect", 2),)}


def practice(**body):
    return read(Practice, {"schema": 1, "decided_by": "Dr Fern", "reason": "Agreed in the May meeting."} | body)


def override(item, choice, reason=REASON):
    return {"item": item, "choice": choice, "reason": reason}


@pytest.mark.parametrize(
    ("item", "given", "choice", "first_reason"),
    [
        ("magnification", {}, "loupe", "no_earlier_operation"),
        ("magnification", OPERATED, "microscope", "operated_before"),
        ("magnification", {"wishes": {"lost_muscle": True}}, "microscope", "may_be_lost"),
        ("anaesthesia", {}, "general", "general_usual"),
        ("anaesthesia", {"born_on": CHILD}, "general", "child"),
        ("anaesthesia", {"option": BOTH_EYES}, "general", "both_eyes"),
        ("anaesthesia", {"wishes": {"adjustable": True}}, "general", "adjusting"),
        ("anaesthesia", {"wishes": {"avoid_general": True}}, "block", "general_avoided"),
        ("anaesthesia", {"wishes": {"avoid_general": True}, "born_on": CHILD}, "general", "child"),
        ("anaesthesia", {"wishes": {"avoid_general": True}, "option": BOTH_EYES}, "general", "both_eyes"),
        ("adjustment", {}, "fixed", "not_wished"),
        ("adjustment", {"wishes": {"adjustable": True}}, "adjustable", "wished"),
        ("suture", {}, "braided_absorbed", "holds_while_healing"),
        ("needle", {}, "spatula_three_eighths", "stays_in_its_plane"),
        ("display", {}, "paper", "in_sight"),
    ],
)
def test_each_item_is_decided_with_its_reason(item, given, choice, first_reason):
    made = sheet(**given).item(Item(item))

    assert (made.choice, made.reasons[0].code) == (choice, first_reason)
    assert made.choice not in [each.id for each in made.alternatives]


def test_the_reason_names_the_muscle_and_the_side():
    (reason,) = sheet(**OPERATED).item(Item.MAGNIFICATION).reasons

    assert "right lateral rectus was operated before" in reason.text


def test_a_muscle_that_may_have_slipped_is_found_in_the_examination():
    short = read(Duction, {"eye": "right", "muscle": "LR", "grade": -1})
    made = sheet(previous_operations=(before("right", "LR", "resect", 2),), ductions=(short,))

    assert "may_be_lost" in codes(made.item(Item.MAGNIFICATION).reasons)


@pytest.mark.parametrize(
    ("given", "item", "choice", "code"),
    [
        ({}, "needle", "cutting", "never_cutting"),
        ({}, "needle", "reverse_cutting", "never_reverse_cutting"),
        ({}, "magnification", "naked_eye", "never_naked_eye"),
        ({"option": BOTH_EYES}, "anaesthesia", "block", "block_both_eyes"),
        ({"born_on": CHILD}, "anaesthesia", "drops", "drops_in_a_child"),
        ({"wishes": {"cooperation": "no"}}, "anaesthesia", "drops", "drops_without_cooperation"),
        ({}, "suture", "hemp", "choice_unknown"),
    ],
)
def test_no_reason_passes_a_stop(given, item, choice, code):
    with pytest.raises(Refused) as refusal:
        sheet(**given, overrides=[override(item, choice)])

    assert [fault.code for fault in refusal.value.faults] == [code]


def test_what_is_refused_is_shown_with_its_stop():
    needle = sheet().item(Item.NEEDLE)
    refused = {way.id: way.refused for way in needle.alternatives if way.refused}

    assert refused.keys() == {"cutting", "reverse_cutting"}
    assert all(stop.level is Level.STOP and "never for sclera" in stop.text for stop in refused.values())


def test_another_choice_stands_with_its_reason_as_a_caution():
    made = sheet(overrides=[override("magnification", "microscope")]).item(Item.MAGNIFICATION)

    assert (made.choice, made.suggested, made.override_reason) == ("microscope", "loupe", REASON)
    caution = made.cautions[0]
    assert (caution.level, REASON in caution.text) == (Level.CAUTION, True)


@pytest.mark.parametrize(
    ("block_at", "earliest"),
    [
        ("2026-12-01T13:30:00+01:00", "2026-12-01T19:30:00+01:00"),
        ("2026-12-01T20:00:00+01:00", "2026-12-02T02:00:00+01:00"),
    ],
)
@pytest.mark.check_value
def test_adjusting_waits_six_hours_after_a_block(block_at, earliest):
    """At least 6 hours until muscle tone is back: common practice, as the job describes it."""
    made = sheet(wishes={"adjustable": True, "avoid_general": True, "block_at": block_at})

    assert made.adjust_from == earliest
    assert "adjust_after_block" in codes(made.item(Item.ADJUSTMENT).cautions)


def test_without_a_block_nothing_is_waited_for():
    made = sheet(wishes={"adjustable": True, "block_at": "2026-12-01T13:30:00+01:00"})

    assert made.item(Item.ANAESTHESIA).choice == "general"
    assert made.adjust_from == ""


class TestTheClinicsOwn:
    def test_takes_the_place_of_what_is_usual_and_says_whose_it_is(self):
        own = practice(choices=[{"item": "magnification", "choice": "microscope", "words": "The one in room 2."}])
        made = sheet(practice=own).item(Item.MAGNIFICATION)

        assert (made.choice, made.clinics_own, made.practice_words) == ("microscope", True, "The one in room 2.")
        assert made.provenance.mark is Mark.CLINICS_OWN
        assert "Dr Fern" in made.provenance.source

    def test_gives_way_where_the_patient_decides(self):
        own = practice(choices=[{"item": "anaesthesia", "choice": "block"}])

        assert sheet(practice=own).item(Item.ANAESTHESIA).choice == "block"
        assert sheet(practice=own, born_on=CHILD).item(Item.ANAESTHESIA).choice == "general"
        assert sheet(practice=own, option=BOTH_EYES).item(Item.ANAESTHESIA).choice == "general"

    def test_figure_is_used_and_marked(self):
        own = practice(figures=[{"name": "adjust_after_block_h", "value": 8}])
        wishes = {"adjustable": True, "avoid_general": True, "block_at": "2026-12-01T10:00:00Z"}
        made = sheet(practice=own, wishes=wishes)
        caution = next(each for each in made.item(Item.ADJUSTMENT).cautions if each.code == "adjust_after_block")

        assert made.adjust_from == "2026-12-01T18:00:00+00:00"
        assert caution.provenance.mark is Mark.CLINICS_OWN

    @pytest.mark.parametrize(
        ("body", "code"),
        [
            ({"choices": [{"item": "needle", "choice": "cutting"}]}, "never_cutting"),
            ({"choices": [{"item": "needle", "choice": "knitting"}]}, "choice_unknown"),
            ({"figures": [{"name": "spare_per_cent", "value": 301}]}, "out_of_range"),
            ({"figures": [{"name": "loupe_to_cm", "value": 30}]}, "not_in_order"),
        ],
    )
    def test_makes_nothing_usual_that_cannot_be(self, body, code):
        with pytest.raises(Refused) as refusal:
            setup.check_practice(practice(**body))

        assert [fault.code for fault in refusal.value.faults] == [code]

    def test_form_shows_every_item_and_figure_with_what_stands(self):
        form = setup.form(practice(figures=[{"name": "turnover_min", "value": 25}]))

        assert [each.item for each in form.items] == [rules.item for rules in RULES]
        assert {each.name: each.value for each in form.figures}["turnover_min"] == 25
        assert all(each.low <= each.usual <= each.high for each in form.figures)


def test_the_day_cannot_be_before_the_birth():
    with pytest.raises(Refused, match="before the patient was born"):
        sheet(on="1980-01-01")


WISHES = st.fixed_dictionaries(
    {
        "adjustable": st.booleans(),
        "cooperation": st.sampled_from(["yes", "no", "unknown"]),
        "avoid_general": st.booleans(),
        "sedation_team": st.booleans(),
        "lost_muscle": st.booleans(),
        "block_at": st.none() | st.just("2026-12-01T09:00:00Z"),
    }
)


@settings(max_examples=40, deadline=None)
@given(
    WISHES,
    st.sampled_from([ONE_EYE, BOTH_EYES]),
    st.sampled_from([CHILD, "2008-12-01", "1950-01-01"]),
    values_of(Practice),
)
def test_what_stands_is_never_refused_whatever_is_wished_or_usual(wishes, option, born_on, own):
    try:
        setup.check_practice(own)
    except Refused:
        own = None
    made = sheet(option, born_on=born_on, wishes=wishes, practice=own)

    for each in made.items:
        ways = {way.id for way in BY_ITEM[each.item].ways}
        assert each.choice in ways
        assert {way.id for way in each.alternatives} == ways - {each.choice}
        assert all(notice.level is not Level.STOP for notice in each.cautions)
        assert each.reasons


@settings(max_examples=12, deadline=None)
@given(WISHES, st.booleans())
def test_the_mirrored_patient_has_the_mirrored_sheet(wishes, operated):
    rest = {"previous_operations": (before("right", "MR"),)} if operated else {}
    turned = {"previous_operations": (before("left", "MR"),)} if operated else {}
    here = write(sheet("recess-mr-resect-lr-right", wishes=wishes, **rest))
    there = write(sheet("recess-mr-resect-lr-left", wishes=wishes, **turned))

    for one in (here, there):
        del one["check_word"]
    assert mirrored(json.loads(json.dumps(here))) == json.loads(json.dumps(there))


def test_the_day_of_the_birthday_counts():
    assert sheet(born_on="2008-12-01", on=ON).age_years == 18
    assert sheet(born_on="2008-12-02", on=ON).age_years == 17
