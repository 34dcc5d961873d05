"""What was written is read again unchanged, for every record body, the case and the engine's answers."""

import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.canonical import canonical
from planner.codec import KINDS, parse, read, read_body, write
from planner.records.case import Case
from planner.values.card import Card
from planner.values.proposal import Proposal
from tests.planner.strategies import values_of

MANY = settings(max_examples=30, deadline=None, suppress_health_check=list(HealthCheck))


@pytest.mark.parametrize("cls", [*KINDS.values(), Case, Proposal, Card], ids=lambda cls: cls.__name__)
def test_a_written_value_is_read_again_unchanged(cls):
    @MANY
    @given(values_of(cls))
    def round_trip(value):
        text = json.dumps(write(value))

        assert read(cls, parse(text)) == value

    round_trip()


@MANY
@given(st.data())
def test_a_canonical_text_is_read_as_the_same_value_and_written_as_the_same_text(data):
    """JavaScript writes 5.0 as 5 and knows one zero: neither may change a value or a digest."""
    kind = data.draw(st.sampled_from(sorted(KINDS)))
    value = data.draw(values_of(KINDS[kind]))
    text = canonical(write(value))

    assert read_body(kind, parse(text)) == value
    assert canonical(write(read_body(kind, parse(text)))) == text


def test_fields_with_a_default_may_be_left_out():
    body = {"schema": 1, "full_name": "Ada Example", "born_on": "1990-02-28", "hospital_number": "7"}

    patient = read_body("patient", body)

    assert patient.note == ""
    assert patient.sex == "unknown"


def test_negative_zero_is_read_as_zero():
    reading = {"gaze": "primary", "range": "near", "correction": "with", "vertical_pd": -0.0}
    body = {"schema": 1, "examined_on": "2026-01-01", "readings": [reading]}

    examination = read_body("examination", body)

    assert str(examination.readings[0].vertical_pd) == "0.0"
