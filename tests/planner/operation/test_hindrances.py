"""What keeps a record from being saved names its field."""

import pytest

from planner.records.materials import Needle
from tests.planner.operation.theatre import ESO_40, ONE_EYE_40, done, drafted, hindrance_codes, with_muscle

AT = "2026-11-25T10:00:00+01:00"
WINDOW = {"earliest_at": AT, "latest_at": "2026-11-26T10:00:00+01:00"}


TWO_DAYS_LATER = "2026-11-27T10:00:00+01:00"
THE_EVENING_BEFORE = "2026-11-24T21:00:00+01:00"
A_MINUTE_EARLIER = "2026-11-25T09:59:00+01:00"


def left(**fields):
    return with_muscle(drafted(ESO_40), "left", "MR", **fields)


def adjustable(**fields):
    return left(adjustable=True) | fields


@pytest.mark.parametrize(
    ("record", "code", "field"),
    [
        (drafted(ESO_40) | {"plan_digest": "0" * 64}, "other_plan", "plan_digest"),
        (drafted(ESO_40) | {"plan_id": drafted(ESO_40)["signature_id"]}, "other_signature", "plan_id"),
        (drafted(ESO_40) | {"muscles": drafted(ESO_40)["muscles"][:1]}, "planned_differs", "muscles"),
        (drafted(ONE_EYE_40) | {"plan_digest": drafted(ESO_40)["plan_digest"]}, "planned_differs", "muscles"),
        (left(done=done("recess"), reason="not measured"), "figure_missing", "muscles.1.done.mm"),
        (left(needle="cutting"), "cutting_needle_in_sclera", "muscles.1.needle"),
        (left(needle="reverse cutting"), "cutting_needle_in_sclera", "muscles.1.needle"),
        (left(needle="taper-cut"), "cutting_needle_in_sclera", "muscles.1.needle"),
        (adjustable(), "tied_at_missing", "tied_at"),
        (drafted(ESO_40) | {"tied_at": AT, "window": WINDOW}, "nothing_adjustable", "tied_at"),
        (adjustable(tied_at=AT), "window_differs", "window"),
        (adjustable(tied_at=AT, window=WINDOW | {"latest_at": TWO_DAYS_LATER}), "window_differs", "window"),
        (adjustable(tied_at=AT, block_at=THE_EVENING_BEFORE, window=WINDOW), "block_far_from_tying", "block_at"),
        (drafted(ESO_40) | {"started_at": AT, "ended_at": A_MINUTE_EARLIER}, "ended_before_start", "ended_at"),
        (drafted(ESO_40) | {"complications": [{"complication": "other"}]}, "note_missing", "complications.0.note"),
    ],
)  # fmt: skip
def test_it_is_refused(record, code, field):
    assert hindrance_codes(ESO_40, record)[code].startswith(field)


@pytest.mark.check_value
def test_what_cuts_is_not_for_sclera():
    """Common practice of the trade: spatulated, never cutting or reverse cutting. From memory: nor a cutting tip."""
    assert {needle for needle in Needle if needle.is_for_sclera} == {Needle.SPATULA, Needle.TAPER}


@pytest.mark.parametrize("needle", ["spatulated", "taper"])
def test_a_needle_for_sclera_is_taken(needle):
    assert hindrance_codes(ESO_40, left(needle=needle)) == {}


@pytest.mark.parametrize("needle", ["cutting", "reverse cutting", "taper-cut"])
def test_a_needle_that_cuts_is_taken_where_no_sclera_is_sewn(needle):
    record = with_muscle(drafted(ESO_40), "left", "IO", done=done("weaken"), needle=needle, reason="overaction")

    assert hindrance_codes(ESO_40, record) == {}


def test_an_adjustable_suture_with_its_times_is_taken():
    assert hindrance_codes(ESO_40, adjustable(tied_at=AT, window=WINDOW)) == {}


def test_complications_with_a_name_need_no_more_words():
    record = drafted(ESO_40) | {"complications": [{"complication": "reflex bradycardia", "eye": "left"}]}

    assert hindrance_codes(ESO_40, record) == {}
