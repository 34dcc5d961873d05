"""A file of old cases is read whole or not at all, and every wrong cell is named."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.codec import read_body, write
from planner.exchange.notebook import all_columns, hindrances, read_notebook, template
from tests.planner.exchange.notebook.files import NAMES, SURGEON, dry_run, file_of, row


def test_the_invented_row_of_the_template_is_never_carried_over():
    found = read_notebook(template(), title="template.csv", surgeon_name=SURGEON, held=())

    assert [(each.row, each.column, each.code) for each in found.faults] == [(2, "reference", "example")]
    assert found.notebook is None


def test_a_row_like_that_of_the_template_is_a_case():
    found = dry_run(row())

    assert (found.rows, found.faults) == (1, ())
    assert found.notebook.cases[0].before_pd == 35.0


def test_a_notebook_is_a_record_as_it_was_read():
    found = dry_run(
        row(),
        row(
            reference="18-2025",
            operation="recess-both-lr",
            before_distance_pd="30 exo",
            before_near_pd="",
            right_mr_mm="",
            left_mr_mm="",
            table_dose_pd="30",
        ),
    )
    body = json.loads(json.dumps(write(found.notebook)))

    assert found.faults == ()
    assert read_body("notebook", body) == found.notebook
    assert hindrances(found.notebook) == ()


@pytest.mark.parametrize(
    ("cells", "column", "code"),
    [
        ({"before_distance_pd": "35"}, "before_distance_pd", "unreadable"),
        ({"before_distance_pd": "-35 eso"}, "before_distance_pd", "unreadable"),
        ({"before_distance_pd": "35 exo"}, "before_distance_pd", "other_direction"),
        ({"before_distance_pd": "0"}, "before_distance_pd", "other_direction"),
        ({"before_distance_pd": "400 eso"}, "before_distance_pd", "out_of_range"),
        ({"operated_on": "14.03.2025"}, "operated_on", "bad_date"),
        ({"operated_on": ""}, "operated_on", "missing"),
        ({"age_years": "four"}, "age_years", "unreadable"),
        ({"age_years": "140"}, "age_years", "out_of_range"),
        ({"diagnosis": "Ana Vrell, squint"}, "diagnosis", "not_allowed"),
        ({"operation": "recess both"}, "operation", "not_allowed"),
        ({"operation": "recess-mr-resect-lr"}, "operation", "other_muscles"),
        ({"left_mr_mm": ""}, "operation", "other_muscles"),
        ({"right_mr_mm": "55"}, "right_mr_mm", "out_of_range"),
        ({"left_mr_mm": "5 mm"}, "left_mr_mm", "unreadable"),
        ({"right_mr_mm": "", "left_mr_mm": ""}, "", "missing"),
        ({"table_dose_pd": "35"}, "table_dose_pd", "told_twice"),
        ({"right_mr_mm": "", "left_mr_mm": "", "table_dose_pd": "90"}, "table_dose_pd", "outside_table"),
        ({"table": "my-own"}, "table", "unknown_table"),
        ({"visit_2_day": "six weeks"}, "visit_2_day", "unreadable"),
        ({"visit_2_day": ""}, "visit_2_day", "missing"),
        ({"visit_2_distance_pd": ""}, "visit_2_distance_pd", "missing"),
        ({"visit_2_distance_pd": "200 eso"}, "visit_2_distance_pd", "out_of_range"),
        ({"visit_2_day": "1"}, "visit_2_day", "repeated"),
        ({"complication": ""}, "complication", "missing"),
        ({"complication": "none"}, "complication", "unreadable"),
        ({"reoperated_day": "-3"}, "reoperated_day", "unreadable"),
    ],
)
def test_a_wrong_cell_is_named_by_row_and_column_and_nothing_is_taken(cells, column, code):
    found = dry_run(row(reference="1"), row(reference="2") | cells)

    assert [(each.row, each.column, each.code) for each in found.faults] == [(3, column, code)]
    assert all(each.text and each.allowed for each in found.faults)
    assert found.notebook is None


def test_all_that_is_wrong_is_told_at_once():
    found = dry_run(row(operated_on="soon"), row(reference="2", age_years="x", complication=""))

    assert [(each.row, each.column) for each in found.faults] == [
        (2, "operated_on"),
        (3, "complication"),
        (3, "age_years"),
    ]


def test_a_column_that_is_not_known_is_not_dropped():
    text = template().replace("age_years", "years", 1)
    found = read_notebook(text, title="x", surgeon_name=SURGEON, held=())

    assert [(each.row, each.column, each.code) for each in found.faults] == [(1, "years", "unknown_column")]


def test_a_column_that_no_row_needs_may_be_left_out():
    lines = [line.split(",") for line in template().split()]
    place = NAMES.index("age_years")
    text = file_of(row()).replace("age_years,", "", 1).replace("2025-03-14,4,", "2025-03-14,", 1)

    assert lines[0][place] == "age_years"
    assert read_notebook(text, title="x", surgeon_name=SURGEON, held=()).notebook is not None


@pytest.mark.parametrize("text", ["", "\n", "nonsense", "\ufeff", '"', "a,b\n1,2", "\x00"])
def test_what_is_no_such_file_is_refused_in_words(text):
    found = read_notebook(text, title="x", surgeon_name=SURGEON, held=())

    assert found.faults
    assert found.notebook is None


def test_a_spreadsheet_of_another_country_is_the_same_notebook():
    """Semicolons between the cells, commas in the figures, a mark before the first letter."""
    plain = dry_run(row(right_mr_mm="4.5", left_mr_mm="4.5"))
    text = "\ufeff" + file_of(row(right_mr_mm="4,5", left_mr_mm="4,5"), delimiter=";")

    assert read_notebook(text, title="x", surgeon_name=SURGEON, held=()).notebook.cases == plain.notebook.cases


def test_a_case_that_stands_there_twice_is_a_fault():
    found = dry_run(row(), row())

    assert [(each.row, each.code) for each in found.faults] == [(3, "repeated")]


def test_a_case_that_was_carried_over_is_not_taken_again():
    first = dry_run(row()).notebook
    again = dry_run(row(), row(reference="18-2025"), held=[first])
    alone = dry_run(row(), held=[first])

    assert (again.already, [each.reference for each in again.notebook.cases]) == ((2,), ["18-2025"])
    assert (alone.already, alone.faults, alone.notebook) == ((2,), (), None)


def test_a_case_that_was_carried_over_with_other_figures_is_a_fault():
    first = dry_run(row()).notebook

    assert [each.code for each in dry_run(row(age_years="5"), held=[first]).faults] == ["differs"]


def test_more_rows_than_a_record_holds_are_to_be_parted():
    found = dry_run(*(row(reference=str(number)) for number in range(501)))

    assert [each.code for each in found.faults] == ["too_long"]


@given(st.text(max_size=300))
@settings(max_examples=40, deadline=None)
def test_no_text_is_answered_with_a_traceback(text):
    names = ",".join(column.name for column in all_columns())
    for each in (text, f"{names}\n{text}", f"{names}\n" + ",".join([text] * len(all_columns()))):
        found = read_notebook(each, title="x", surgeon_name=SURGEON, held=())
        assert found.faults or found.rows == 0 or found.notebook
