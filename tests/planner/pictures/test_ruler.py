"""One muscle's distances from the limbus, to scale."""

import pytest

from planner.anatomy import Eye, Muscle
from planner.pictures import Work, ruler
from planner.values.option import Operation
from planner.values.picture import Fill, Label, Stroke

RECESSED = Work(eye=Eye.LEFT, muscle=Muscle.MR, operation=Operation.RECESS, mm=5.5, insertion_mm=5.5, limbus_mm=11.0)


def tick_of(picture, words):
    return next(mark.x for mark in picture.marks if isinstance(mark, Label) and mark.words == words)


def test_the_new_attachment_stands_where_its_figure_is():
    picture = ruler(RECESSED)
    (arrow,) = (mark for mark in picture.marks if isinstance(mark, Stroke) and mark.fill is Fill.INK)
    zero, ten = tick_of(picture, "0"), tick_of(picture, "10")

    assert arrow.points[0][0] - zero == pytest.approx((ten - zero) * 1.1, abs=0.03)


def test_a_wide_recession_stays_on_the_strip():
    wide = Work(eye=Eye.LEFT, muscle=Muscle.LR, operation=Operation.RECESS, mm=12.5, insertion_mm=6.9, limbus_mm=19.4)
    picture = ruler(wide)

    for mark in picture.marks:
        for x, _ in mark.points if isinstance(mark, Stroke) else [(mark.x, mark.y)]:
            assert 0 <= x <= picture.width_mm


def test_it_says_in_words_what_it_shows():
    assert ruler(RECESSED).spoken == (
        "LEFT eye, medial rectus, along the eye from the limbus: insertion at 5.5 mm, new attachment at 11 mm"
    )


def test_there_is_none_without_a_figure():
    assert ruler(Work(eye=Eye.LEFT, muscle=Muscle.IO, operation=Operation.WEAKEN)) is None
