"""Charts as pictures: round ticks, everything on the page, words that never meet, shapes that are told apart."""

import json
from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.card.pdf.faces import lacks
from planner.charts import (
    Band,
    Bar,
    Bars,
    Chart,
    Identity,
    Level,
    Line,
    Point,
    Points,
    Shape,
    alike,
    course_axis,
    days_axis,
    draw,
    round_axis,
    steps,
)
from planner.charts.labels import box
from planner.charts.painting import shape
from planner.codec import write
from planner.values.picture import Disc, Label, Stroke

figures = st.lists(st.floats(-150, 150), max_size=12)


def picture(values, layers=(), days=200.0):
    return draw(
        Chart(
            title="Deviation",
            spoken="Deviation over time",
            horizontal=course_axis("Time since the operation", days),
            upright=round_axis("Deviation at distance, Δ", values),
            layers=tuple(layers),
        )
    )


def labels(drawn):
    return [mark for mark in drawn.marks if isinstance(mark, Label)]


@given(figures)
@settings(max_examples=40)
def test_ticks_are_round_even_and_hold_every_figure(values):
    axis = round_axis("Δ", values)
    apart = [after.at - before.at for before, after in pairwise(axis.ticks)]

    assert 2 <= len(axis.ticks) <= 7
    assert max(apart) - min(apart) < 1e-6
    assert f"{apart[0]:g}".strip("0.") in {"1", "2", "5"}
    assert all(axis.low - 1e-5 <= value <= axis.high + 1e-5 for value in values)


@pytest.mark.parametrize(
    ("last", "unit", "words"),
    [
        (50, "weeks", ["0", "2", "4", "6"]),
        (200, "months", ["0", "1", "2", "3", "4", "5", "6"]),
        (800, "months", ["0", "6", "12", "18", "24"]),
        (3000, "years", ["0", "2", "4", "6", "8"]),
    ],
)
def test_time_is_told_in_the_unit_that_suits_it(last, unit, words):
    axis = days_axis("Time", last)

    assert axis.title == f"Time, {unit}"
    assert [tick.words for tick in axis.ticks] == words


def test_the_first_days_have_room_on_an_axis_spaced_by_the_root():
    axis = course_axis("Time", 400)

    assert axis.share(0) == 0
    assert axis.share(100) == pytest.approx(0.5)
    assert axis.share(400) == axis.share(900) == 1


def test_axes_that_are_alike_put_equal_figures_on_the_identity_line():
    across, up = alike("Expected, Δ", "Achieved, Δ", [3, 47])
    drawn = draw(Chart(title="", spoken="", horizontal=across, upright=up, layers=(Identity(name="as expected"),)))
    line = next(mark for mark in drawn.marks if isinstance(mark, Stroke) and mark.dashed)

    assert [tick.at for tick in across.ticks] == [tick.at for tick in up.ticks]
    (start_x, start_y), (end_x, end_y) = line.points
    assert start_x < end_x
    assert start_y > end_y


@given(st.lists(st.tuples(st.integers(0, 900), st.integers(-60, 60)), min_size=1, max_size=12))
@settings(max_examples=40)
def test_no_words_meet_and_nothing_leaves_the_page(places):
    points = tuple(Point(x=day, y=pd, reach=4, words=f"{pd} Δ") for day, pd in places)
    drawn = picture(
        [pd for _, pd in places],
        [
            Band(name="expected, 95 of 100", edges=((0, -9, 9), (900, -9, 9))),
            Level(name="straight", at=0),
            Points(name="at distance", shape=Shape.DISC, points=points),
            Points(name="at near", shape=Shape.SQUARE, points=points),
        ],
        days=max(day for day, _ in places),
    )

    assert not [pair for pair in combinations(map(box, labels(drawn)), 2) if pair[0].meets(pair[1])]
    assert all(each.left >= 0 and each.right <= drawn.width_mm for each in map(box, labels(drawn)))
    for mark in drawn.marks:
        if isinstance(mark, Stroke):
            assert all(-1 <= x <= drawn.width_mm and -1 <= y <= drawn.height_mm for x, y in mark.points)


def test_a_words_place_is_given_up_rather_than_shared():
    crowd = tuple(Point(x=100, y=0, words=f"{number} Δ") for number in range(9))
    drawn = picture([-5, 5], [Points(name="", shape=Shape.RING, points=crowd)])

    placed = [label.words for label in labels(drawn) if label.words.endswith(" Δ") and label.words[0].isdigit()]

    assert 1 <= len(placed) <= 4


def test_shapes_differ_by_more_than_their_fill():
    """No two are the same outline; a disc and a ring are told apart by ink, which prints."""
    outlines = {}
    for which in Shape:
        marks = shape(which, 0, 0)
        outlines[which] = tuple(mark.fill if isinstance(mark, Disc) else (mark.points, mark.closed) for mark in marks)

    assert len(set(outlines.values())) == len(Shape)


def test_every_named_layer_stands_in_the_key_once():
    layers = [
        Line(name="at near", places=((0, 1), (5, 2)), dashed=True),
        Bars(name="within 10 Δ", outstanding="beyond", bars=(Bar(start=0, end=5, height=3, stands_out=True),)),
        Level(name="", at=0),
    ]

    assert [label.words for label in labels(picture([0, 5], layers))][-3:] == ["at near", "within 10 Δ", "beyond"]


def test_a_step_keeps_its_figure_until_the_next():
    assert steps([(0, 1.0), (30, 0.8)], 90) == ((0, 1.0), (30, 1.0), (30, 0.8), (90, 0.8))
    assert steps([(10, 0.2, 0.4)], 5) == ((10, 0.2, 0.4), (10, 0.2, 0.4))


def test_an_empty_chart_has_axes_and_can_be_written_in_the_card_s_typeface():
    drawn = picture([])

    assert any(isinstance(mark, Stroke) for mark in drawn.marks)
    assert not any(lacks(label.words) for label in labels(picture([-20, 20])))
    assert json.dumps(write(drawn))
