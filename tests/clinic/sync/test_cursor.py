"""A cursor is read again as it was written; every other text is none."""

import base64
import uuid

import pytest
from hypothesis import given
from hypothesis import strategies as st

from clinic.sync import cursor
from clinic.sync.cursor import LARGEST_MOMENT, LARGEST_POSITION, Cursor

FEED = uuid.UUID("0b0b7a52-7b1f-4c46-9d5e-3e1c8d2f6a10")
SCOPES = st.sampled_from(["all", "theatre-14"])


@given(st.uuids(), SCOPES, st.integers(0, LARGEST_POSITION), st.integers(0, LARGEST_MOMENT))
def test_a_written_cursor_is_read_again(feed, scope, position, moment):
    written = Cursor(feed=feed, scope=scope, position=position, moment=moment)

    assert cursor.read(str(written)) == written


@given(st.text(max_size=90))
def test_any_other_text_is_no_cursor_and_no_error(text):
    assert cursor.read(text) is None


def encoded(plain):
    return base64.urlsafe_b64encode(plain.encode()).decode().rstrip("=")


@pytest.mark.parametrize(
    "plain",
    [
        f"1 {FEED.hex} all 5 0",
        f"2 {FEED.hex} all -5 0",
        f"2 {FEED.hex} all {LARGEST_POSITION + 1} 0",
        f"2 {FEED.hex} all +5 0",
        f"2 {FEED.hex} all 05 0",
        f"2 {FEED} all 5 0",
        f"2 {FEED.hex} 5 0",
        f"2 {FEED.hex} all 5",
        f"2 {FEED.hex} all 5 -1",
        f"2 {FEED.hex} all 5 {LARGEST_MOMENT + 1}",
        "2 feed all 5 0",
    ],
)
def test_a_cursor_of_another_form_is_none(plain):
    assert cursor.read(encoded(plain)) is None
