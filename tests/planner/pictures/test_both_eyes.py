"""Both eyes in two views: the right side, to scale, told apart by shape and word, mirrored when the plan is."""

from dataclasses import replace
from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.anatomy import INSERTION_FROM_LIMBUS_MM, Eye, Muscle
from planner.codec import write
from planner.pictures import Work, both_eyes
from planner.pictures.frame import MIDDLE, WIDTH_MM, Frame
from planner.pictures.muscles import CORNEA_MM, middle
from planner.values.option import OffsetDirection, Operation
from planner.values.picture import Anchor, Disc, Fill, Label, Stroke, View
from tests.planner.mirror import mirrored

VIEWS = (View.FACING, View.FROM_THE_HEAD)


def recession(eye, muscle, mm):
    insertion = INSERTION_FROM_LIMBUS_MM[muscle]
    return Work(
        eye=eye, muscle=muscle, operation=Operation.RECESS, mm=mm, insertion_mm=insertion, limbus_mm=insertion + mm
    )


works = st.lists(
    st.builds(
        lambda eye, muscle, operation, half, offset: Work(
            eye=eye,
            muscle=muscle,
            operation=operation,
            mm=half / 2 if half else None,
            insertion_mm=INSERTION_FROM_LIMBUS_MM.get(muscle),
            limbus_mm=INSERTION_FROM_LIMBUS_MM.get(muscle),
            offset=offset,
        ),
        st.sampled_from(Eye),
        st.sampled_from(Muscle),
        st.sampled_from(Operation),
        st.integers(0, 25),
        st.sampled_from([None, *OffsetDirection]),
    ),
    unique_by=lambda work: (work.eye, work.muscle),
    max_size=6,
)


def label(picture, words):
    (found,) = (mark for mark in picture.marks if isinstance(mark, Label) and mark.words == words)
    return found


def cross(one, other):
    (a, b, c), (d, e, f) = one, other
    return (b * f - c * e, c * d - a * f, a * e - b * d)


class TestOrientation:
    """Derived from directions in the room: x to the viewer's right hand, y up in sight, z at the viewer."""

    @pytest.mark.parametrize(
        ("view", "to_the_head"),
        [(View.FACING, (0, 1, 0)), (View.FROM_THE_HEAD, (0, -1, 0))],
        ids=["upright patient, head up", "supine patient, the head nearest to the surgeon"],
    )
    def test_the_patients_right_eye_lies_where_the_room_says(self, view, to_the_head):
        """A person's right is the cross product of where the face looks and where the head is; the face looks at us."""
        to_the_patients_right = cross((0, 0, 1), to_the_head)
        picture = both_eyes((), view)
        right_eye, left_eye = label(picture, "RIGHT eye"), label(picture, "LEFT eye")

        assert (right_eye.x > left_eye.x) is (to_the_patients_right[0] > 0)
        head, feet = label(picture, "patient's head"), label(picture, "patient's feet")
        assert (head.y < feet.y) is (to_the_head[1] > 0)

    def test_facing_the_patient_the_right_eye_is_on_the_viewers_left_and_from_the_head_on_the_right(self):
        facing, seated = (label(both_eyes((), view), "RIGHT eye").x for view in VIEWS)

        assert facing < WIDTH_MM / 2 < seated

    @given(works)
    def test_the_view_from_the_head_is_the_other_turned_by_half_a_turn_and_no_mirror_image(self, planned):
        facing, seated = (both_eyes(planned, view) for view in VIEWS)
        turned = [
            [(round(2 * MIDDLE[0] - x, 2), round(2 * MIDDLE[1] - y, 2)) for x, y in mark.points]
            for mark in facing.marks
            if isinstance(mark, Stroke)
        ]

        assert [list(mark.points) for mark in seated.marks if isinstance(mark, Stroke)] == turned

    @pytest.mark.parametrize("view", VIEWS)
    def test_it_is_always_labelled_with_its_view_the_eyes_and_the_ends_of_the_patient(self, view):
        picture = both_eyes((recession(Eye.LEFT, Muscle.MR, 5.5),), view)

        assert picture.title.lower() == view
        assert view in picture.spoken
        for words in ("RIGHT eye", "LEFT eye", "patient's head", "patient's feet", "nose"):
            assert label(picture, words)

    @pytest.mark.parametrize("view", VIEWS)
    @pytest.mark.parametrize("eye", Eye)
    def test_a_medial_rectus_points_to_the_nose_and_a_lateral_away_from_it(self, view, eye):
        nose = Frame(view).point((0, 0))
        names = [m for m in both_eyes((), view).marks if isinstance(m, Label)]
        centre = Frame(view).point(middle(eye))

        def distance_of(muscle):
            own = min((m for m in names if m.words == muscle), key=lambda m: dist((m.x, m.y), centre))
            return dist((own.x, own.y), nose)

        assert distance_of("MR") < dist(centre, nose) < distance_of("LR")

    @pytest.mark.parametrize("view", VIEWS)
    @pytest.mark.parametrize(("muscle", "towards_the_head"), [("SR", True), ("SO", True), ("IR", False), ("IO", False)])
    def test_upper_muscles_lie_towards_the_patients_head(self, view, muscle, towards_the_head):
        picture = both_eyes((), view)
        head_is_up = label(picture, "patient's head").y < MIDDLE[1]

        for mark in picture.marks:
            if isinstance(mark, Label) and mark.words == muscle:
                assert (mark.y < MIDDLE[1]) is (head_is_up is towards_the_head)


class TestMirror:
    @pytest.mark.parametrize("view", VIEWS)
    @given(planned=works)
    def test_the_mirrored_plan_has_the_mirrored_picture(self, view, planned):
        here = both_eyes(planned, view)
        there = both_eyes([replace(work, eye=work.eye.other) for work in planned], view)

        assert _heap(there) == _heap(_reflected(here))

    @given(planned=works)
    def test_its_words_are_the_other_sides_words(self, planned):
        here = both_eyes(planned, View.FACING).spoken
        there = both_eyes([replace(work, eye=work.eye.other) for work in planned], View.FACING).spoken

        assert there == mirrored(here)


def _reflected(picture):
    other_end = {Anchor.START: Anchor.END, Anchor.END: Anchor.START, Anchor.MIDDLE: Anchor.MIDDLE}

    def turned(mark):
        if isinstance(mark, Stroke):
            return replace(mark, points=tuple((round(WIDTH_MM - x, 2), y) for x, y in mark.points))
        if isinstance(mark, Disc):
            return replace(mark, x=round(WIDTH_MM - mark.x, 2))
        return replace(mark, x=round(WIDTH_MM - mark.x, 2), words=mirrored(mark.words), anchor=other_end[mark.anchor])

    return replace(picture, marks=tuple(turned(mark) for mark in picture.marks))


def _heap(picture):
    """The marks in no order: points of an outline, too, for a mirror image runs around the other way."""
    return sorted(
        str({**write(mark), "points": sorted(map(str, mark.points))} if isinstance(mark, Stroke) else write(mark))
        for mark in picture.marks
    )


class TestScale:
    @pytest.mark.parametrize("view", VIEWS)
    @pytest.mark.parametrize("eye", Eye)
    @pytest.mark.parametrize("muscle", [Muscle.MR, Muscle.LR, Muscle.SR, Muscle.IR])
    @pytest.mark.parametrize("mm", [3.0, 5.5, 12.5])
    def test_a_recessed_rectus_begins_at_its_distance_from_the_limbus(self, view, eye, muscle, mm):
        picture = both_eyes((recession(eye, muscle, mm),), view)
        centre = Frame(view).point(middle(eye))
        (band,) = (m for m in picture.marks if isinstance(m, Stroke) and m.fill is Fill.TONE)
        front = [sum(pair) / 2 for pair in zip(*sorted(band.points, key=lambda p: dist(p, centre))[:2], strict=True)]

        assert dist(front, centre) - CORNEA_MM == pytest.approx(INSERTION_FROM_LIMBUS_MM[muscle] + mm, abs=0.02)

    def test_every_mark_lies_in_the_picture(self):
        everything = [recession(eye, muscle, 12.5) for eye in Eye for muscle in list(Muscle)[:4]]
        for view in VIEWS:
            picture = both_eyes(everything, view)
            for mark in picture.marks:
                for x, y in mark.points if isinstance(mark, Stroke) else [(mark.x, mark.y)]:
                    assert 0 <= x <= picture.width_mm
                    assert 0 <= y <= picture.height_mm


class TestShapes:
    def test_every_operation_has_a_shape_of_its_own(self):
        drawn = {
            operation: tuple(
                str(write(mark))
                for mark in both_eyes((Work(eye=Eye.RIGHT, muscle=Muscle.IO, operation=operation),), View.FACING).marks
                if isinstance(mark, Stroke)
            )
            for operation in Operation
        }

        assert len(set(drawn.values())) == len(Operation)

    def test_no_shape_is_told_by_its_tone_alone(self):
        """With all fills taken away every operation still differs."""
        drawn = {
            tuple(
                str(write(replace(mark, fill=Fill.NONE)))
                for mark in both_eyes((Work(eye=Eye.RIGHT, muscle=Muscle.IO, operation=operation),), View.FACING).marks
                if isinstance(mark, Stroke)
            )
            for operation in Operation
        }

        assert len(drawn) == len(Operation)

    @given(works)
    def test_the_operation_and_its_figure_stand_beside_each_worked_muscle(self, planned):
        words = [mark.words for mark in both_eyes(planned, View.FACING).marks if isinstance(mark, Label)]

        for work in planned:
            assert work.operation.words in words
            assert work.mm is None or f"{work.mm:g} mm" in words
            assert work.offset is None or f"moved {work.offset}" in words

    def test_all_six_muscles_of_each_eye_are_there(self):
        words = [mark.words for mark in both_eyes((), View.FACING).marks if isinstance(mark, Label)]

        assert {muscle: words.count(muscle) for muscle in Muscle} == dict.fromkeys(Muscle, 2)

    def test_a_tendon_moved_up_goes_towards_the_patients_head_in_each_view(self):
        for view in VIEWS:
            up, down = (
                both_eyes(
                    (replace(recession(Eye.LEFT, Muscle.LR, 7.0), offset=direction),),
                    view,
                )
                for direction in (OffsetDirection.UP, OffsetDirection.DOWN)
            )
            only_up = [m for m in up.marks if isinstance(m, Stroke) and m not in down.marks]
            head_is_up = label(up, "patient's head").y < MIDDLE[1]
            shaft = next(m for m in only_up if len(m.points) == 2)
            (_, start), (_, end) = shaft.points

            assert (end < start) is head_is_up
