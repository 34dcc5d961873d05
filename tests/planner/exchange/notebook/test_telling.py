"""What a notebook teaches is what its rows say, held against what the table prints."""

import json

import pytest

from planner.calibration.admission import Confounder, Question, Window, admitted
from planner.codec import read, write
from planner.desk import answer
from planner.exchange.notebook import Carried, carried_outcomes
from planner.results import Reporting, report_groups
from planner.results.result import Result
from tests.planner.exchange.notebook.files import SURGEON, dry_run, file_of, row

ID = "0192f0c1-0000-7000-8000-000000000001"
ONE_EYE = {"operation": "recess-lr-resect-mr", "before_distance_pd": "30 exo", "before_near_pd": "", "left_mr_mm": ""}


def told(*rows):
    reading = dry_run(*rows)
    assert reading.faults == ()
    return list(carried_outcomes(Carried(id=ID, notebook=reading.notebook), Window()))


@pytest.mark.check_value
@pytest.mark.parametrize(
    ("cells", "promised_pd"),
    [
        # Rows as tests/planner/published_rows.py copies them from print: Parks' table for two muscles.
        pytest.param({"right_mr_mm": "5", "left_mr_mm": "5"}, 35.0, id="35 eso: both medial recti 5.0 mm"),
        pytest.param({"right_mr_mm": "3", "left_mr_mm": "3"}, 15.0, id="15 eso: both medial recti 3.0 mm"),
        pytest.param({**ONE_EYE, "right_lr_mm": "7", "right_mr_mm": "6"}, 30.0, id="30 exo: lateral 7.0, medial 6.0"),
        pytest.param({"right_mr_mm": "", "left_mr_mm": "", "table_dose_pd": "35"}, 35.0, id="looked up at 35"),
    ],
)
def test_the_promise_is_the_printed_row_of_the_doses(cells, promised_pd):
    (case,) = told(row(**cells))

    assert case.past_case.promised_pd == promised_pd


def test_a_case_is_counted_at_its_last_visit_in_the_window():
    """35 eso before, 2 eso on day 45: 33 of 35 achieved."""
    (case,) = told(row(visit_3_day="200", visit_3_distance_pd="20 eso"))

    assert (case.past_case.achieved_pd, case.past_case.days_after) == (33.0, 45)
    assert [each.days_after for each in case.result.seen] == [1, 45, 200]
    assert case.result.expected_pd == 0.0


def test_a_diagnosis_is_a_word_of_the_list_or_else_the_direction():
    assert [case.result.diagnosis for case in told(row(), row(reference="2", diagnosis=""))] == [
        "infantile esotropia",
        "esodeviation",
    ]


def test_exo_counts_in_the_direction_operated_for():
    cells = {**ONE_EYE, "right_lr_mm": "7", "right_mr_mm": "6", "visit_2_distance_pd": "5 exo"}
    (case,) = told(row(**cells))

    assert (case.result.before_pd, case.past_case.achieved_pd) == (-30.0, 25.0)


@pytest.mark.parametrize(
    ("cells", "confounder"),
    [
        ({"operated_before": "yes"}, Confounder.EARLIER_OPERATION),
        ({"suture_moved": "yes"}, Confounder.ADJUSTED),
        ({"complication": "yes"}, Confounder.COMPLICATION),
        ({"palsy_or_restriction": "yes"}, Confounder.PALSY_OR_RESTRICTION),
        ({"diagnosis": "sixth nerve palsy"}, Confounder.PALSY_OR_RESTRICTION),
        ({"reoperated_day": "30"}, Confounder.REOPERATION),
    ],
)
def test_what_confounds_a_result_keeps_it_from_teaching(cells, confounder):
    (case,) = told(row(**cells))

    assert case.past_case.confounders == (confounder,)
    assert admitted(Question(family=case.family, cases=(case.past_case,))) == ()


def test_a_case_that_was_never_seen_again_is_counted_and_teaches_nothing():
    nothing = dict.fromkeys((f"visit_{n}_{part}" for n in (1, 2) for part in ("day", "distance_pd", "near_pd")), "")
    (case,) = told(row(**nothing))

    assert (case.past_case, case.result.seen) == (None, ())


def test_the_desk_tells_notebooks_beside_operations():
    text = file_of(row(), row(reference="18"))
    asked = {"ask": "read_notebook", "text": text, "title": "cases.csv", "surgeon_name": SURGEON}
    notebook = json.loads(answer(json.dumps(asked)))["answer"]["notebook"]
    outcomes = json.loads(answer(json.dumps({"ask": "outcomes", "notebooks": [{"id": ID, "notebook": notebook}]})))
    results = tuple(read(Result, each["result"]) for each in outcomes["answer"])
    (group,) = report_groups(Reporting(results=results))

    assert len({each["id"] for each in outcomes["answer"]}) == 2
    assert (group.report.cases, group.report.pairs[0].achieved_pd) == (2, 33.0)
    assert write(results[0])["surgeon"] == SURGEON
