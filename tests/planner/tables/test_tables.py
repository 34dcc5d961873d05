"""A dose table is refused unless it says where it comes from and its rows can be interpolated in."""

import copy
import tomllib

import pytest

from planner.errors import Refused
from planner.tables import read_table, table, tables
from planner.tables.shelf import FOLDER

FILES = sorted(FOLDER.glob("*.toml"))
ORIGIN_KEYS = (
    "mark", "publication", "place", "place_confirmed", "transcribed_by", "transcribed_on", "checked_by", "validity",
)  # fmt: skip


def written():
    return tomllib.loads((FOLDER / "wright-after-parks.toml").read_text(encoding="utf-8"))


def refused(value):
    with pytest.raises(Refused) as caught:
        read_table(value)
    return [(fault.code, fault.field) for fault in caught.value.faults]


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.stem)
def test_every_table_file_is_a_valid_table_named_like_its_file(file):
    assert table(file.stem).stamp.id == file.stem


def test_the_two_tables_of_the_first_day_are_there():
    assert {"wright-after-parks", "classic-parks"} <= {each.stamp.id for each in tables()}


def test_a_table_from_memory_says_so():
    assert table("classic-parks").provenance.mark == "from memory, verify"
    assert table("wright-after-parks").provenance.mark == "published"


@pytest.mark.parametrize("key", ORIGIN_KEYS)
def test_a_table_without_a_key_of_its_origin_is_refused(key):
    value = written()
    del value["origin"][key]

    assert refused(value) == [("missing", f"origin.{key}")]


@pytest.mark.parametrize("key", ["schema", "id", "name", "caution", "origin", "esotropia", "exotropia"])
def test_a_table_without_a_key_of_its_own_is_refused(key):
    value = written()
    del value[key]

    assert refused(value) == [("missing", key)]


def spoilt(spoil):
    value = copy.deepcopy(written())
    spoil(value["esotropia"])
    return value


def swap_two_rows(rows):
    rows[2], rows[3] = rows[3], rows[2]


def forget_two_rows(rows):
    del rows[5:7]


@pytest.mark.parametrize(
    ("spoil", "expected"),
    [
        (lambda rows: rows[3].update(both_recess_mm=3.9), ("not_rising", "esotropia.3.both_recess_mm")),
        (lambda rows: rows[3].update(deviation_pd=25), ("not_rising", "esotropia.3.deviation_pd")),
        (swap_two_rows, ("not_rising", "esotropia.3.deviation_pd")),
        (forget_two_rows, ("gap", "esotropia.5.deviation_pd")),
        (lambda rows: rows[3].pop("both_resect_mm"), ("gap", "esotropia.4.both_resect_mm")),
        (lambda rows: rows[8].pop("one_resect_mm"), ("gap", "esotropia.8")),
        (lambda rows: rows[3].update(both_recess_mm=45), ("out_of_range", "esotropia.3.both_recess_mm")),
        (lambda rows: rows[3].update(both_recess_mm="4.5"), ("wrong_type", "esotropia.3.both_recess_mm")),
        (lambda rows: rows[3].update(both_recess_cm=0.45), ("unknown_field", "esotropia.3.both_recess_cm")),
        (lambda rows: rows.__delitem__(slice(1, None)), ("too_short", "esotropia")),
    ],
)
def test_a_bad_table_is_refused_with_the_row_named(spoil, expected):
    assert expected in refused(spoilt(spoil))


def test_a_column_of_one_row_is_refused():
    value = written()
    for row in value["exotropia"][1:]:
        row.pop("both_resect_mm", None)

    assert refused(value) == [("gap", "exotropia.0.both_resect_mm")]


def test_an_unknown_table_is_refused_with_the_known_ones_named():
    with pytest.raises(Refused) as caught:
        table("../../etc/passwd")

    (fault,) = caught.value.faults
    assert fault.code == "unknown_table"
    assert "classic-parks" in fault.allowed
