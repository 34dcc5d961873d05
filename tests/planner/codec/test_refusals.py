"""Every fault has its code, its place, its value and what would be allowed; nothing but a refusal ever comes out."""

import copy
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import planner.codec
from planner.codec import KINDS, parse, read, read_body, write
from planner.codec.faults import MOST_FAULTS
from planner.codec.text import MOST_CHARACTERS, MOST_LEVELS
from planner.errors import Refused
from planner.records.case import Case
from tests.planner.strategies import values_of

DOCUMENTED_CODES = set(re.findall(r"``([a-z_]+)``", planner.codec.__doc__.split("Codes of the faults:")[1]))

CASE = {
    "schema": 1,
    "table": "wright-after-parks",
    "examination": {
        "schema": 1,
        "examined_on": "2026-11-02",
        "readings": [{"gaze": "primary", "range": "distance", "correction": "with", "horizontal_pd": 40}],
    },
}
READING = "examination.readings.0"


def changed(path, value):
    case = copy.deepcopy(CASE)
    *way, last = path.split(".")
    place = case
    for step in way:
        place = place[int(step) if step.isdigit() else step]
    place[last] = value
    return case


def faults_of(cls, value):
    with pytest.raises(Refused) as caught:
        read(cls, value)
    return caught.value.faults


@pytest.mark.parametrize(
    ("path", "value", "code"),
    [
        ("colour", "red", "unknown_field"),
        ("schema", 2, "unsupported_schema"),
        ("schema", True, "unsupported_schema"),
        ("table", 5, "wrong_type"),
        ("table", "", "too_short"),
        ("table", "x" * 61, "too_long"),
        ("table", " x", "surrounding_space"),
        ("table", "a\nb", "bad_character"),
        ("table", "a\ud800", "bad_character"),
        ("born_on", "2026-02-30", "bad_date"),
        ("born_on", "1899-12-31", "bad_date"),
        ("born_on", "20260203", "bad_date"),
        ("born_on", "\N{FULLWIDTH DIGIT TWO}026-02-03", "bad_date"),
        ("examination", [], "wrong_type"),
        ("examination.readings", [], "too_short"),
        ("examination.readings", [{}] * 121, "too_long"),
        ("examination.readings", {}, "wrong_type"),
        ("examination.note", "a\x00", "bad_character"),
        ("examination.note", "a\n", "surrounding_space"),
        (f"{READING}.horizontal_pd", 150.5, "out_of_range"),
        (f"{READING}.horizontal_pd", float("nan"), "out_of_range"),
        (f"{READING}.horizontal_pd", float("-inf"), "out_of_range"),
        (f"{READING}.horizontal_pd", 10**400, "out_of_range"),
        (f"{READING}.horizontal_pd", True, "wrong_type"),
        (f"{READING}.horizontal_pd", "40", "wrong_type"),
        (f"{READING}.gaze", "sideways", "not_allowed"),
        (f"{READING}.gaze", None, "wrong_type"),
        ("examination.versions", [{"eye": "right", "muscle": "IO", "grade": 1.5}], "wrong_type"),
    ],
)
def test_a_fault_is_told_by_code(path, value, code):
    faults = faults_of(Case, changed(path, value))

    assert [fault.code for fault in faults] == [code]
    assert faults[0].field.startswith(path)
    assert faults[0].text
    assert faults[0].value
    assert faults[0].allowed


@pytest.mark.parametrize("name", ["schema", "table", "examination"])
def test_a_missing_field_is_named(name):
    case = copy.deepcopy(CASE)
    del case[name]

    (fault,) = faults_of(Case, case)

    assert (fault.code, fault.field) == ("missing", name)


def test_a_reading_without_any_figure_is_refused():
    case = changed(f"{READING}.horizontal_pd", None)

    (fault,) = faults_of(Case, case)

    assert (fault.code, fault.field) == ("missing", READING)


def test_two_readings_of_the_same_thing_are_refused():
    case = copy.deepcopy(CASE)
    case["examination"]["readings"] *= 2

    (fault,) = faults_of(Case, case)

    assert (fault.code, fault.field) == ("repeated", "examination.readings.1")


def test_all_faults_are_told_at_once():
    case = changed("table", 5)
    case["born_on"] = "never"
    case["examination"]["readings"][0]["gaze"] = "sideways"

    assert [fault.field for fault in faults_of(Case, case)] == [f"{READING}.gaze", "table", "born_on"]


def test_faults_name_unknown_fields_in_a_stable_order():
    case = CASE | {"zebra": 1, "ant": 2}

    assert [fault.field for fault in faults_of(Case, case)] == ["zebra", "ant"]


def test_a_hostile_input_gets_a_short_answer():
    case = CASE | {f"key{number}": number for number in range(5000)}

    assert len(faults_of(Case, case)) == MOST_FAULTS


def test_an_unknown_kind_is_refused():
    with pytest.raises(Refused) as caught:
        read_body("horoscope", {})

    assert caught.value.faults[0].code == "unknown_kind"


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "bad_json"),
        ("{", "bad_json"),
        ("NaN", "bad_json"),
        ("[-Infinity]", "bad_json"),
        ("1" * 5000, "bad_json"),
        ('{"a": 1, "a": 1}', "repeated"),
        ("[" * (MOST_LEVELS + 1), "too_deep"),
        ("[" * 1_000_000, "too_deep"),
        ('{"a":' * 1000, "too_deep"),
        (" " * (MOST_CHARACTERS + 1), "too_long"),
    ],
    ids=lambda value: value[:20],
)
def test_a_text_that_is_no_honest_json_is_refused(text, code):
    with pytest.raises(Refused) as caught:
        parse(text)

    assert caught.value.faults[0].code == code


def test_brackets_within_texts_are_not_counted_as_depth():
    text = '["' + "[" * 1000 + '\\"[["]'

    assert parse(text) == ["[" * 1000 + '"[[']


def test_many_escaped_quotes_are_read_in_linear_time():
    """A backtracking scan would take hours here."""
    with pytest.raises(Refused):
        parse('"' + '\\"' * 500_000 + "[" * 50)


ANY_KEY = st.text(max_size=8) | st.sampled_from(["schema", "readings", "gaze", "examination", "table", "option"])
ANY_SCALAR = st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8)
ANY_JSON = st.recursive(
    ANY_SCALAR, lambda inner: st.lists(inner, max_size=4) | st.dictionaries(ANY_KEY, inner, max_size=4), max_leaves=20
)


def honest(value_or_refusal):
    """Fail on anything but a value or a documented refusal."""
    try:
        value_or_refusal()
    except Refused as refusal:
        faults = refusal.faults
    else:
        return

    assert faults
    assert {fault.code for fault in faults} <= DOCUMENTED_CODES


@given(st.sampled_from(sorted(KINDS)), ANY_JSON)
def test_any_json_gives_a_value_or_a_refusal(kind, body):
    honest(lambda: read_body(kind, body))


@given(st.text())
def test_any_text_gives_a_value_or_a_refusal(text):
    honest(lambda: parse(text))


def spots(value, path=()):
    yield path
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from spots(inner, (*path, key))
    elif isinstance(value, list):
        for place, inner in enumerate(value):
            yield from spots(inner, (*path, place))


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_a_valid_body_with_any_spot_spoilt_gives_a_value_or_a_refusal(kind):
    @settings(max_examples=40, deadline=None)
    @given(values_of(KINDS[kind]), st.data())
    def spoil(value, data):
        body = write(value)
        *way, last = data.draw(st.sampled_from([spot for spot in spots(body) if spot]))
        place = body
        for step in way:
            place = place[step]
        place[last] = data.draw(ANY_JSON)

        honest(lambda: read_body(kind, body))

    spoil()
