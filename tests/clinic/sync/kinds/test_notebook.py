"""A surgeon's old cases enter under that surgeon's name alone, and leave as a whole."""

import copy

from planner.canonical import digest


def reason(person, record):
    (result,) = person.results(record)
    assert result["status"] == "rejected", result
    return result["code"], result["field"]


def with_case(record, **fields):
    body = copy.deepcopy(record["body"])
    body["cases"][0] |= fields
    return record | {"body": body, "digest": digest(body)}


def test_a_notebook_enters_once_and_is_taken_back_whole(cast):
    pen = cast.surgeon.pen
    notebook = pen.notebook()
    cast.surgeon.accepted(notebook)
    (again,) = cast.surgeon.results(notebook)
    cast.surgeon.accepted(pen.retraction(notebook))

    assert again["status"] == "duplicate"


def test_nobody_carries_over_another_surgeons_cases(cast):
    notebook = cast.surgeon.pen.notebook(surgeon_name="Dr Somebody Else")

    assert reason(cast.surgeon, notebook) == ("surgeon_differs", "body.surgeon_name")


def test_the_server_judges_the_rows_as_the_dry_run_did(cast):
    notebook = cast.surgeon.pen.notebook()

    assert reason(cast.surgeon, with_case(notebook, before_pd=-35))[0] == "other_direction"
    assert reason(cast.surgeon, with_case(notebook, table="my-own"))[0] == "unknown_table"
    assert reason(cast.surgeon, with_case(notebook, table_dose_pd=140)) == (
        "outside_table",
        "body.cases.0.table_dose_pd",
    )
