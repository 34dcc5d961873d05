"""Operations as CSV: nobody's name, number, birth date, id or true date, and no combination of fewer than five."""

import csv
import re
from collections import Counter
from datetime import date
from io import StringIO
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.audit.export.ages import age_band
from planner.audit.export.rows import CLINICS_OWN, COLUMNS, SHARED, Case, row
from planner.audit.export.suppression import HIDDEN, SMALLEST, suppressed
from planner.codec import read
from planner.results.window import Window
from tests.fixtures.demo.two_years.told import BY_ID, CLINIC, RECORDS, of_kind
from tests.planner.audit.generated import results, said

WINDOW = Window(first_days=28, last_days=120)


def cases(count):
    return [
        {"result": each, "person": place, "born_on": f"20{place % 20:02d}-03-0{place % 9 + 1}"}
        for place, each in enumerate(results(count))
    ]


def shifts(count, seed=4):
    draw = Random(seed)  # noqa: S311 -- drawn to be the same each time
    return [draw.choice((-1, 1)) * draw.randint(30, 364) for _ in range(count)]


def exported(told, moved):
    return said("audit_export", cases=told, shifts_days=moved)


def rows_of(text):
    return list(csv.DictReader(StringIO(text, newline=""), strict=True))


@pytest.fixture(scope="module")
def demo(simulated):
    """The simulated clinic as a phone would export it: its cases, and the file."""
    people = {patient["id"]: place for place, patient in enumerate(of_kind("patient"))}
    told = [
        {
            "result": each,
            "person": people[BY_ID[each["id"]]["patient"]],
            "born_on": BY_ID[BY_ID[each["id"]]["patient"]]["body"]["born_on"],
        }
        for each in simulated
    ]
    return told, exported(told, shifts(len(people)))["answer"]


def test_nothing_that_names_anybody_is_in_the_file(demo):
    _, made = demo
    names = [patient["body"]["full_name"] for patient in of_kind("patient")]
    names += [account["full_name"] for account in CLINIC["accounts"]] + [CLINIC["clinic"]["name"]]
    words = {word for name in names for word in re.findall(r"\w{4,}", name)} - {"clinic"}
    numbers = {patient["body"]["hospital_number"] for patient in of_kind("patient")}
    births = {patient["body"]["born_on"] for patient in of_kind("patient")}
    ids = {record["id"] for record in RECORDS} | {CLINIC["clinic"]["id"]}

    assert made["rows"] > 100
    assert not [each for each in (*words, *numbers, *births, *ids) if each in made["csv"]]


def test_no_row_tells_one_of_its_own_true_dates(demo):
    told, _ = demo
    moved = shifts(len(of_kind("patient")))
    for case in told:
        found = row(read(Case, case), moved[case["person"]], WINDOW)
        visits = {
            visit["body"]["seen_on"]
            for visit in of_kind("follow_up")
            if visit["body"]["operation_id"] == case["result"]["id"]
        }
        assert not {case["result"]["operated_on"], case["born_on"], *visits} & set(found.values())
        apart = date.fromisoformat(found["operated_on_shifted"]) - date.fromisoformat(case["result"]["operated_on"])
        assert apart.days == moved[case["person"]]


def test_python_s_reader_gives_back_what_was_written(demo):
    told, made = demo
    back = rows_of(made["csv"])

    assert made["csv"].splitlines()[0] == ",".join(COLUMNS)
    assert len(back) == made["rows"] == len(told) - made["left_out"]
    assert all(set(each) == set(COLUMNS) and None not in each.values() for each in back)
    truths = Counter((each["result"]["before_pd"] > 0, each["result"]["reoperated_days"] is not None) for each in told)
    if not made["left_out"]:
        assert Counter((float(each["before_pd_to_5"]) > 0, each["operated_again"] == "yes") for each in back) == truths


def test_every_combination_that_shows_is_shared_by_five(demo):
    _, made = demo

    assert min(Counter(tuple(each[name] for name in SHARED) for each in rows_of(made["csv"])).values()) >= SMALLEST


@given(st.lists(st.tuples(st.sampled_from("abc"), st.sampled_from("xy"), st.sampled_from("pqrs")), max_size=40))
@settings(max_examples=40)
def test_whatever_is_exported_no_small_cell_shows_and_every_row_is_kept_or_counted(drawn):
    names = ("one", "two", "three")
    kept, left_out = suppressed([dict(zip(names, each, strict=True)) for each in drawn], names)

    assert len(kept) + left_out == len(drawn)
    assert left_out < SMALLEST
    assert all(count >= SMALLEST for count in Counter(tuple(each[name] for name in names) for each in kept).values())


def test_what_is_common_enough_is_not_hidden():
    kept, left_out = suppressed([{"one": "a", "two": "x"}] * SMALLEST, ("one", "two"))

    assert left_out == 0
    assert HIDDEN not in {value for each in kept for value in each.values()}


def test_four_alone_are_left_out_and_counted():
    made = exported(cases(4), shifts(4))["answer"]

    assert (made["rows"], made["left_out"]) == (0, 4)
    assert any("4 of 4 rows were left out" in each["text"] for each in made["notices"])


def test_the_statement_says_what_it_does_not_protect_against():
    notices = exported(cases(40), shifts(40))["answer"]["notices"]

    assert {each["code"] for each in notices if each["level"] == "caution"} == {"not_anonymous", "not_twice"}


@pytest.mark.parametrize("shift", [0, 29, -29])
def test_a_shift_that_hides_nothing_is_refused(shift):
    (fault,) = exported(cases(2), [100, shift])["faults"]

    assert (fault["code"], fault["field"]) == ("shift_too_small", "shifts_days.1")


def test_a_person_without_a_shift_is_refused():
    (fault,) = exported(cases(2), [100])["faults"]

    assert (fault["code"], fault["field"]) == ("shift_missing", "cases.1.person")


def test_a_table_that_a_clinic_named_itself_is_not_named():
    told = cases(1)[0]
    told["result"]["table"] = "tables-of-dr-marden"

    assert row(read(Case, told), 50, WINDOW)["table"] == CLINICS_OWN


@pytest.mark.parametrize(
    ("born", "band"),
    [("2024-06-02", "under 2"), ("2024-06-01", "2 to 4"), ("2021-06-01", "5 to 9"), ("2016-06-01", "10 to 17"),
     ("2008-06-01", "18 to 39"), ("1986-06-01", "40 to 64"), ("1961-06-01", "65 and over"), (None, "not known")],
)  # fmt: skip
def test_ages_are_bands(born, band):
    assert age_band(born, "2026-06-01") == band
