"""A clinic's own table: read from TOML or JSON, refused with the row named, and never a way round a maximum."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.codec import read, write
from planner.desk import answer
from planner.errors import Refused
from planner.records.dose_table import DoseTable
from planner.tables import check_own, from_text
from tests.planner.patients import codes, doses, options
from tests.planner.tables.own_table import OWN, TOML, own, written


def test_toml_and_json_say_the_same():
    assert from_text(TOML) == from_text(json.dumps(OWN)) == own()


@pytest.mark.parametrize("text", [TOML.replace("\n", "\r\n"), "\N{ZERO WIDTH NO-BREAK SPACE}" + TOML])
def test_a_file_from_another_system_is_read_all_the_same(text):
    assert from_text(text) == own()


def faults(value):
    with pytest.raises(Refused) as caught:
        check_own(read(DoseTable, value))
    return [(fault.code, fault.field) for fault in caught.value.faults]


def spoilt(rows="esotropia", place=1, **figures):
    value = written()
    value[rows][place] |= figures
    return value


def banded(*bands, **rest):
    rows = [
        {"deviation_pd": low, "to_pd": high, "both_recess_mm": 3 + place} for place, (low, high) in enumerate(bands)
    ]
    return written(between="bands", esotropia=rows, exotropia=rows, **rest)


DECISIONS = [
    # what is wrong, the table, the code and the row that is named
    ("a deviation that stands still", spoilt(deviation_pd=15), ("not_rising", "esotropia.1.deviation_pd")),
    ("a deviation that falls", spoilt(deviation_pd=10), ("not_rising", "esotropia.1.deviation_pd")),
    ("a row forgotten", spoilt("exotropia", deviation_pd=26), ("gap", "exotropia.1.deviation_pd")),
    ("a dose that falls", spoilt(both_recess_mm=2), ("not_rising", "esotropia.1.both_recess_mm")),
    ("a hole in a column", spoilt(both_recess_mm=None), ("gap", "esotropia.2.both_recess_mm")),
    ("half of a one-eye pair", spoilt(place=0, one_resect_mm=None), ("gap", "esotropia.0")),
    ("a column of one row", spoilt(place=2, both_resect_mm=5), ("gap", "esotropia.2.both_resect_mm")),
    ("no millimetres but centimetres", spoilt(both_recess_mm=0.35), ("out_of_range", "esotropia.1.both_recess_mm")),
    ("a unit that is not of the form", spoilt(both_recess_cm=0.35), ("unknown_field", "esotropia.1.both_recess_cm")),
    ("degrees", spoilt(deviation_deg=14), ("unknown_field", "esotropia.1.deviation_deg")),
    ("a figure as a text", spoilt(both_recess_mm="3,5"), ("wrong_type", "esotropia.1.both_recess_mm")),
    ("a negative dose", spoilt(both_recess_mm=-3.5), ("out_of_range", "esotropia.1.both_recess_mm")),
    (
        "more than 7 mm of MR",
        spoilt(place=2, both_recess_mm=7.5),
        ("above_widest_maximum", "esotropia.2.both_recess_mm"),
    ),
    (
        "more than 10 mm of LR",
        spoilt(place=2, one_resect_mm=10.5),
        ("above_widest_maximum", "esotropia.2.one_resect_mm"),
    ),
    (
        "more than 10 mm of LR",
        spoilt("exotropia", both_recess_mm=10.5),
        ("above_widest_maximum", "exotropia.1.both_recess_mm"),
    ),
    (
        "more than 8 mm of MR",
        spoilt("exotropia", both_resect_mm=8.5),
        ("above_widest_maximum", "exotropia.1.both_resect_mm"),
    ),
    ("an upper end without bands", spoilt(to_pd=29), ("not_allowed", "esotropia.1.to_pd")),
    ("a band without its end", banded((60, 69), (70, None)), ("missing", "esotropia.1.to_pd")),
    ("a band that ends before it begins", banded((60, 69), (70, 68)), ("not_rising", "esotropia.1.to_pd")),
    ("bands that overlap", banded((60, 69), (69, 78)), ("not_rising", "esotropia.1.deviation_pd")),
    ("bands with a gap", banded((60, 69), (72, 79)), ("gap", "esotropia.1.deviation_pd")),
    ("a band too wide", banded((60, 71), (72, 79)), ("gap", "esotropia.0.to_pd")),
    ("an id of the engine's", written(id="classic-parks"), ("id_taken", "id")),
    ("an id with blanks", written(id="Harbour Clinic"), ("bad_pattern", "id")),
    ("a mark of the engine's", written(origin=OWN["origin"] | {"mark": "computed"}), ("not_allowed", "origin.mark")),
    ("a mark of nobody's", written(origin=OWN["origin"] | {"mark": "sure"}), ("not_allowed", "origin.mark")),
    ("no source", written(origin=OWN["origin"] | {"publication": ""}), ("too_short", "origin.publication")),
    ("no date", written(origin=OWN["origin"] | {"transcribed_on": "soon"}), ("bad_date", "origin.transcribed_on")),
    ("one row", written(exotropia=OWN["exotropia"][:1]), ("too_short", "exotropia")),
    ("another schema", written(schema=2), ("unsupported_schema", "schema")),
    (
        "a maximum that is none",
        written(maxima=[{"muscle": "MR", "operation": "recess", "mm": 7, "reason": "we always did so"}]),
        ("not_allowed", "maxima.0"),
    ),
    (
        "a maximum of its own",
        written(maxima=[{"muscle": "MR", "operation": "recess", "mm": 9, "reason": "we always did so"}]),
        ("not_allowed", "maxima"),
    ),
]


@pytest.mark.parametrize(("value", "expected"), [each[1:] for each in DECISIONS], ids=[each[0] for each in DECISIONS])
def test_a_bad_table_is_refused_with_the_row_named(value, expected):
    assert expected in faults(value)


@pytest.mark.parametrize("key", [*OWN["origin"]])
def test_the_origin_is_whole_or_the_table_is_refused(key):
    value = written()
    del value["origin"][key]

    assert faults(value) == [("missing", f"origin.{key}")]


def test_good_bands_are_taken():
    check_own(read(DoseTable, banded((60, 69), (70, 79), (80, 90))))


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "missing"),
        ("schema == 1", "bad_toml"),
        ("[[[[", "bad_toml"),
        ('a = "\n', "bad_toml"),
        ("a = " + "9" * 5000, "bad_toml"),
        ("a = " + "[" * 201, "too_long"),
        ("#" * 60_001, "too_long"),
        ("{", "bad_json"),
        ("a = 2026-11-20", "unknown_field"),
        (7, "wrong_type"),
        (None, "wrong_type"),
    ],
)
def test_a_text_that_is_no_table_is_a_coded_refusal(text, code):
    with pytest.raises(Refused) as caught:
        from_text(text)

    assert code in codes(caught.value.faults)


@given(st.text(max_size=200) | st.text(alphabet="[]{}=\"\n'#.a1", max_size=200))
def test_any_text_is_a_table_or_a_coded_refusal(text):
    with pytest.raises(Refused):
        from_text(text)


def test_the_desk_reads_a_table_and_checks_it_as_a_record():
    def ask(**fields):
        return json.loads(answer(json.dumps(fields)))

    body = ask(ask="read_table", text=TOML)["answer"]

    assert body == write(own())
    assert ask(ask="check", kind="dose_table", body=body) == {"answer": {}}
    assert ask(ask="check", kind="dose_table", body=OWN) == {"answer": {}}
    (fault,) = ask(ask="check", kind="dose_table", body=spoilt(both_recess_mm=2))["faults"]
    assert (fault["code"], fault["field"], fault["value"]) == ("not_rising", "esotropia.1.both_recess_mm", "2")
    assert ask(ask="read_table")["faults"][0]["field"] == "text"


def test_a_case_is_dosed_by_the_clinics_table_and_says_so():
    """25 Δ is a row: 3.5 mm. 30 Δ lies halfway between 3.5 and 4.5: 4.0 mm."""
    for angle, mm in ((25, 3.5), (30, 4.0)):
        offered = options(angle, table="harbour-clinic", clinic_table=own())["recess-both-mr"]

        assert set(doses(offered).values()) == {mm}
        assert "clinics_own_table" in codes(offered.notices)
        assert "common practice" in {step.provenance.mark for step in offered.doses[0].steps}


def test_what_the_clinics_table_has_no_column_for_is_a_stop():
    offered = options(25, table="harbour-clinic", clinic_table=own())["resect-both-lr"]

    assert codes(offered.notices) == ["no_column"]


@pytest.mark.parametrize(
    ("table", "own_table", "expected"),
    [
        ("harbour-clinic", None, ("unknown_table", "table")),
        ("classic-parks", own(), ("other_table", "clinic_table.id")),
        (
            "harbour-clinic",
            read(DoseTable, spoilt(both_recess_mm=2)),
            ("not_rising", "clinic_table.esotropia.1.both_recess_mm"),
        ),
        ("classic-parks", own(id="classic-parks"), ("id_taken", "clinic_table.id")),
    ],
)
def test_a_case_whose_table_cannot_be_used_is_refused(table, own_table, expected):
    with pytest.raises(Refused) as caught:
        options(25, table=table, clinic_table=own_table)

    assert [(fault.code, fault.field) for fault in caught.value.faults] == [expected]
