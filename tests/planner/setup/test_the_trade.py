"""The figures of the set-up as the trade gives them, written down here by hand: value, words on the sheet, and mark.

Common practice has no source. What is published is from ``clinical-reference.md``, sections 3 and 7, with its source.
"""

import pytest

from planner.provenance import Mark
from planner.records.practice import FigureName, Item
from planner.setup.figures import DEFINITIONS
from tests.planner.setup.prepared import ADULT, CHILD, patient, sheet

REASON = "The surgeon and the team agreed on it."


def chosen(item, choice):
    return {"overrides": [{"item": item, "choice": choice, "reason": REASON}]}


MICROSCOPE, BLOCK = chosen("magnification", "microscope"), chosen("anaesthesia", "block")
ADJUSTED = {"wishes": {"adjustable": True, "avoid_general": True}}


def all_said(item):
    """Every sentence of an item: reasons, what would change it, cautions, the merit and the stop of every other way."""
    ways = item.alternatives
    return [
        *item.reasons,
        *item.would_change,
        *item.cautions,
        *(way.merit for way in ways),
        *(way.refused for way in ways if way.refused),
    ]


def said(given, code):
    (found,) = [each for item in sheet(**given).items for each in all_said(item) if each.code == code]
    return found


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("name", "usual"),
    [
        (FigureName.LOUPE_FROM_CM, 40),
        (FigureName.LOUPE_TO_CM, 50),
        (FigureName.DROPS_WAIT_MIN, 2),
        (FigureName.SUTURE_WEAK_FROM_WEEKS, 3),
        (FigureName.SUTURE_WEAK_TO_WEEKS, 4),
        (FigureName.SUTURE_ABSORBED_MONTHS, 2),
        (FigureName.ADJUST_AFTER_BLOCK_H, 6),
    ],
)
def test_a_figure_that_no_clinic_set_is_that_of_common_practice(name, usual):
    """Common practice of the trade: loupe, topical drops, a braided absorbable suture, adjusting after a block."""
    assert DEFINITIONS[name].usual == usual


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("given", "code", "words"),
    [
        (MICROSCOPE, "loupe_merit", "40 to 50 cm away"),
        ({}, "drops_merit", "held deep in the fornix for about 2 minutes"),
        ({}, "holds_while_healing", "strength is lost in 3 to 4 weeks"),
        ({}, "holds_while_healing", "absorbed in about 2 months"),
        (ADJUSTED, "adjust_after_block", "at least 6 hours pass until the muscles have their tone again"),
        ({}, "flat_curve", "Three eighths of a circle run flat through thin sclera"),
        ({}, "stays_in_its_plane", "stays in the plane of the sclera"),
        ({}, "never_cutting", "never for sclera"),
        ({}, "never_reverse_cutting", "never for sclera"),
    ],
)
def test_common_practice_is_said_so_and_marked_so(given, code, words):
    """Common practice of the trade, no source."""
    found = said(given, code)

    assert words in found.text
    assert found.provenance.mark is Mark.COMMON_PRACTICE


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("code", "words", "source"),
    [
        ("published_strength", "75 % at 2, 50 % at 3, 25 % at 4, 0 % at 5", "instructions for use of polyglactin 910"),
        ("published_strength", "absorbed in 56 to 70 days", "instructions for use of polyglactin 910"),
        ("perforation", "1 of 760 muscles", "728 of 554,000 muscles (0.13 %)"),
        ("relaxant_and_ductions", "up to 20 minutes", "France et al., Ophthalmology 1980;87:1282-7"),
        ("never_naked_eye", "about 0.3 mm", "sclera behind the insertions of the recti: 0.3 mm"),
        ("heart_reflex", "slow the heart", "30 to 85 %"),
    ],
)
def test_what_is_published_is_said_with_its_source(code, words, source):
    """Instructions for use; a survey of perforations, 728 / 554,000 = 1 / 761; France et al.; section 3 for sclera."""
    found = said({}, code)

    assert words in found.text
    assert found.provenance.mark is Mark.PUBLISHED
    assert source in found.provenance.source


PUBLISHED = {"published_strength", "perforation", "relaxant_and_ductions", "never_naked_eye", "heart_reflex"}
FROM_MEMORY = {
    "malignant_hyperthermia",
    "hyperthermia_in_the_family",
    "block_and_anticoagulants",
    "block_bleeding_not_asked",
    "block_topped_up",
    "staying_merit",
    "staying_suture",
}
KNOWN_ILL = {"malignant_hyperthermia_family": "yes", "anticoagulants": "apixaban"}
PEOPLE = [{}, {"born_on": CHILD}, {"person": KNOWN_ILL}, {"now": patient(ADULT, **KNOWN_ILL)}]
CHOICES = [
    {},
    ADJUSTED,
    {"wishes": {"adjustable": True, "lost_muscle": True}},
    BLOCK,
    MICROSCOPE,
    chosen("suture", "staying"),
    chosen("suture", "monofilament_absorbed"),
    chosen("display", "tablet"),
]


def test_every_sentence_bears_its_mark_and_none_is_called_published_that_is_not():
    """Published and from memory are these; a surgeon's own choice is a rule of the house, all else common practice."""
    sheets = [sheet(**who, **choice) for who in PEOPLE for choice in CHOICES]
    marks = {each.code: each.provenance.mark for made in sheets for item in made.items for each in all_said(item)}
    house = {f"overridden-{item}" for item in Item} & marks.keys()
    common = marks.keys() - PUBLISHED - FROM_MEMORY - house

    assert {marks[code] for code in PUBLISHED} == {Mark.PUBLISHED}
    assert {marks[code] for code in FROM_MEMORY} == {Mark.FROM_MEMORY}
    assert {marks[code] for code in house} == {Mark.HOUSE_RULE}
    assert {marks[code] for code in common} == {Mark.COMMON_PRACTICE}
    assert all(each.provenance.source for made in sheets for item in made.items for each in all_said(item))
