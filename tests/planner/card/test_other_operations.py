"""Operations without a figure, and tendons moved up or down: on the card in words, in the drawing by direction."""

from dataclasses import replace
from io import BytesIO

import pytest
from pypdf import PdfReader

from planner.card.pdf import pdf
from planner.errors import Refused
from planner.proposal import propose
from planner.signing import compare_drawing, sign
from planner.values.option import OffsetDirection
from planner.values.statement import Level
from tests.planner.additions.pieces import graded
from tests.planner.card.test_real_options import signed_card
from tests.planner.patients import case, reading
from tests.planner.signing.pieces import attestation, drawing, option, plan

V_EXO = case(
    -30,
    reading(-40, 12, gaze="up"),
    reading(-20, 12, gaze="down"),
    reading(-30, 8, gaze="right"),
    reading(-30, 20, gaze="left"),
    vertical_pd=14,
    versions=(graded("right", "IO", 0), graded("left", "IO", 0), graded("right", "SO", -2)),
    excyclotorsion_right_deg=9.0,
    dvd_left_pd=8.0,
)
PALSY = case(
    0,
    reading(0, 8, gaze="right"),
    reading(0, 20, gaze="left"),
    vertical_pd=20,
    versions=(graded("right", "IO", 2), graded("right", "SO", -2)),
)
COMBINED = replace(V_EXO, combine=("recess-both-lr", "offset-both-lr", "recess-ir-left", "harada-ito-right-so"))


def words(card):
    (page,) = PdfReader(BytesIO(pdf(card))).pages
    return " ".join(page.extract_text().split())


def signable(a_case):
    return [
        (a_case, option)
        for option in propose(a_case).all_options
        if all(notice.level is not Level.STOP for notice in option.notices)
    ]


@pytest.mark.parametrize(
    ("a_case", "option"),
    [*signable(V_EXO), *signable(PALSY), *signable(COMBINED)[-1:]],
    ids=lambda value: getattr(value, "id", ""),
)
def test_every_addition_and_combination_makes_a_card_with_all_it_says(a_case, option):
    card = signed_card(a_case, option)
    text = words(card)

    assert "\ufffd" not in text
    assert len(card.lines) == len(option.doses)
    for line in card.lines:
        assert f"{line.eye_words} {line.muscle_words}" in text
        assert line.operation_words in text
        assert line.attachment_words in text
        assert line.offset_words in text
        assert line.mm is None or f"{line.operation_words} {line.mm:.1f} mm" in text
        assert line.limbus_mm is None or f"{line.limbus_mm:.1f} mm from the limbus" in text
    assert "None" not in text
    for notice in option.notices:
        assert notice.text in text
    for expected in option.expected:
        assert expected.statement.text.removesuffix(".") in card.expected_words


def test_a_muscle_recessed_and_moved_is_one_line_that_says_both():
    option = propose(COMBINED).combined
    lines = {(line.eye_words, line.muscle_words): line for line in signed_card(COMBINED, option).lines}
    line = lines["RIGHT EYE", "lateral rectus"]

    assert (line.operation_words, line.mm, line.limbus_mm) == ("recess", 7.0, 13.9)
    assert line.offset_words == "moved up by half a tendon width (5 mm)"
    assert len(lines) == 4


def test_weakening_comes_before_tightening_in_each_eye():
    option = propose(COMBINED).combined

    assert [(line.eye_words, line.operation_words) for line in signed_card(COMBINED, option).lines] == [
        ("RIGHT EYE", "recess"),
        ("RIGHT EYE", "Harada-Ito"),
        ("LEFT EYE", "recess"),
        ("LEFT EYE", "recess"),
    ]


def test_a_deviation_that_is_vertical_alone_is_named_so():
    option = next(option for _, option in signable(PALSY))

    assert signed_card(PALSY, option).deviation_words == "Right hyper 20 Δ at distance with correction"
    assert "No horizontal" not in signed_card(PALSY, option).expected_words


def offset_option():
    return next(each for _, each in signable(V_EXO) if each.id == "offset-both-lr")


def test_a_tendon_drawn_the_other_way_is_another_drawing():
    doses = offset_option().doses
    right = drawing(*doses)
    unmoved = tuple(replace(each, offset=None) for each in right)
    wrong = (replace(right[0], offset=OffsetDirection.DOWN), right[1])

    assert compare_drawing(option(*doses), right).equal
    assert compare_drawing(option(*doses), wrong).missing == right[:1]
    assert not compare_drawing(option(*doses), unmoved).equal


def test_what_differs_is_said_with_its_direction():
    doses = offset_option().doses
    a_plan = plan(option(*doses))
    with pytest.raises(Refused) as caught:
        sign(a_plan, attestation(a_plan, drawn=drawing(*doses)[1:]))

    assert "transpose the right lateral rectus, moved up" in caught.value.faults[0].text
