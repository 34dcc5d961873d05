"""A followed operation teaches what its records say, and says what confounds it."""

import json

import pytest

from planner.calibration.admission import Question, Window, admitted
from planner.codec import read, write
from planner.desk import answer
from planner.followup import Reported, past_case, result
from planner.followup.aftercare import Aftercare
from planner.records.examination import Constancy
from planner.results import Reporting, report_groups
from planner.results.result import Result
from tests.planner.examined import straight
from tests.planner.followup.aftercare import ID, OPERATED_ON, cared, on, visit
from tests.planner.operation.theatre import ESO_40, IDS, ONE_EYE_40, done, drafted, signed, with_muscle

EXO_30 = signed("recess-both-lr", straight(-30))
AT_45 = visit("Weeks 6 to 8", 45, straight(4), straight(6, at="near"), constancy="latent", stereo_octaves_lost=0)
LOST = {"complication": "lost muscle", "eye": "right", "muscle": "MR", "note": "", "answer": ""}


def reported(care, **more):
    return Reported(id=ID, care=read(Aftercare, json.loads(json.dumps(care))), **more)


def taught(care, **more):
    return past_case(reported(care, **more), Window())


def test_a_result_is_the_signed_expectation_and_what_was_seen():
    """40 Δ answered by the 40 Δ row leaves nothing by the table: Wright's appendix, as the table file quotes it."""
    found = result(reported(cared(ESO_40, AT_45)))

    assert (found.operated_on, found.family, found.table) == (OPERATED_ON, "recess-both-mr", "wright-after-parks")
    assert (found.before_pd, found.expected_pd, found.diagnosis) == (40.0, 0.0, "esodeviation")
    assert [{name: value for name, value in write(each).items() if value is not None} for each in found.seen] == [
        {"days_after": 45, "distance_pd": 4.0, "near_pd": 6.0, "constancy": "latent", "stereo_octaves_lost": 0.0}
    ]


def test_a_result_says_how_constant_it_was_before_and_whether_stereoacuity_was_lost_to_nil():
    at_200 = visit("Month 6", 200, straight(0), straight(0, at="near"))
    at_200["follow_up"]["stereo_lost_to_nil"] = True
    found = result(reported(cared(signed("recess-both-lr", straight(-30), constancy="intermittent"), at_200)))

    assert found.constancy is Constancy.INTERMITTENT
    assert [each.stereo_lost_to_nil for each in found.seen] == [True]


def test_a_result_is_what_the_audit_reads():
    found = result(reported(cared(ESO_40, AT_45)))
    (group,) = report_groups(Reporting(results=(read(Result, json.loads(json.dumps(write(found)))),)))

    assert (group.report.cases, group.report.pairs[0].achieved_pd) == (1, 36.0)


@pytest.mark.parametrize(
    ("pieces", "left_pd", "achieved_pd"), [(ESO_40, 4, 36.0), (ESO_40, -4, 44.0), (EXO_30, -5, 25.0), (EXO_30, 5, 35.0)]
)
def test_a_past_case_counts_in_the_direction_operated_for(pieces, left_pd, achieved_pd):
    case = taught(cared(pieces, visit("Weeks 6 to 8", 45, straight(left_pd))))

    assert (case.promised_pd, case.achieved_pd) == (abs(pieces[0]["option"]["expected_correction_pd"]), achieved_pd)
    assert case.confounders == ()


def test_the_last_visit_in_the_window_teaches_and_a_later_one_does_not():
    visits = (
        visit("Month 6", 180, straight(20)),
        visit("Weeks 6 to 8", 45, straight(4)),
        visit("Week 1", 7, straight(0)),
    )

    assert (taught(cared(ESO_40, *visits)).days_after, taught(cared(ESO_40, visits[0])).days_after) == (45, 180)


def test_without_a_measured_visit_nothing_is_taught_and_the_result_is_unseen():
    care = cared(ESO_40, visit("Day 1", 1))

    assert taught(care) is None
    assert result(reported(care)).seen == ()


def test_what_was_measured_with_another_correction_teaches_nothing():
    assert taught(cared(ESO_40, visit("Weeks 6 to 8", 45, straight(30, correction="without")))) is None


def test_a_plan_without_a_horizontal_expectation_gives_no_result():
    care = cared(signed("recess-ir-left", straight(0, 15)), visit("Weeks 6 to 8", 45, straight(0, 3)))

    assert (result(reported(care)), taught(care)) == (None, None)


def test_either_eye_is_one_family():
    other = signed("recess-mr-resect-lr-left", straight(40))

    assert {result(reported(cared(each, AT_45))).family for each in (ONE_EYE_40, other)} == {"recess-mr-resect-lr"}


MOVED = {
    "schema": 1,
    "operation_id": IDS["operation"],
    "operation_digest": "0" * 64,
    "adjusted_at": f"{on(0)}T17:00:00+01:00",
    "surgeon_name": "Dr. Mira Example",
    "before": [{"range": "distance", "horizontal_pd": -12}],
    "moved": [{"eye": "right", "muscle": "MR", "way": "tighten", "mm": 1}],
    "after": [{"range": "distance", "horizontal_pd": -2}],
}
RECORD = drafted(ESO_40, OPERATED_ON)
BEFORE = {"eye": "right", "muscle": "MR", "operation": "unknown", "mm": None, "year": None}


@pytest.mark.parametrize(
    ("care", "confounder"),
    [
        (cared(ESO_40, AT_45, adjustment=MOVED), "the suture was moved afterwards"),
        (
            cared(
                ESO_40, AT_45, operation=with_muscle(RECORD, "left", "MR", done=done("recess", 5.0), reason="Tight.")
            ),
            "something else was done than planned",
        ),
        (cared(ESO_40, AT_45, operation=RECORD | {"complications": [LOST]}), "a complication at the operation"),
        (
            cared(ESO_40, AT_45, operation=with_muscle(RECORD, "right", "MR", state="slipped")),
            "a complication at the operation",
        ),
        (
            cared(ESO_40, AT_45, operation=with_muscle(RECORD, "right", "MR", duction_before="restricted")),
            "a palsy or a restriction",
        ),
    ],
)
def test_what_confounds_a_case_keeps_it_from_teaching(care, confounder):
    case = taught(care)

    assert case.confounders == (confounder,)
    assert admitted(Question(family="recess-both-mr", cases=(case,))) == ()


def test_sutures_tied_as_they_were_confound_nothing():
    assert taught(cared(ESO_40, AT_45, adjustment=MOVED | {"moved": [], "after": []})).confounders == ()


@pytest.mark.parametrize(
    ("eye", "muscle", "teaches"),
    [
        ("right", "MR", False),
        ("left", "LR", False),  # a resection after a recession of its antagonist is no primary operation
        ("right", "LR", False),
        ("right", "IO", True),
        ("left", "SR", True),
    ],
)
def test_any_horizontal_muscle_that_was_operated_before_confounds(eye, muscle, teaches):
    plan, signature = ESO_40
    examination = plan["case"]["examination"] | {"previous_operations": [BEFORE | {"eye": eye, "muscle": muscle}]}
    pieces = (plan | {"case": plan["case"] | {"examination": examination}}, signature)
    case = taught(cared(pieces, AT_45, operation=RECORD))

    assert (case.confounders == ()) is teaches
    assert len(admitted(Question(family="recess-both-mr", cases=(case,)))) == int(teaches)


def test_a_dose_chosen_for_near_teaches_nothing_of_its_family():
    """20 Δ at distance and 40 Δ at near, dosed for near: all is well at distance, which was promised 40 Δ there."""
    near = signed("recess-both-mr", straight(20), straight(40, at="near"), aim="near")
    case = taught(cared(near, visit("Weeks 6 to 8", 45, straight(0), straight(4, at="near"))))

    assert (case.promised_pd, case.achieved_pd) == (40.0, 20.0)
    assert case.confounders == ("the dose was chosen for the deviation at near",)
    assert admitted(Question(family="recess-both-mr", cases=(case,))) == ()


@pytest.mark.parametrize(("days", "confounders"), [(46, ()), (45, ("operated again before the follow-up",))])
def test_another_operation_confounds_what_was_seen_after_it(days, confounders):
    assert taught(cared(ESO_40, AT_45), reoperated_days=days).confounders == confounders


def asked(name, **fields):
    return json.loads(answer(json.dumps({"ask": name, **fields})))


def test_what_the_desk_makes_of_operations_is_what_it_is_asked_with_next():
    (made,) = asked("outcomes", operations=[{"id": ID, "care": cared(ESO_40, AT_45)}])["answer"]
    calibrated = asked("calibrate", family=made["family"], cases=[made["past_case"]])["answer"]
    (group,) = asked("results", results=[made["result"]])["answer"]

    assert (made["id"], group["report"]["cases"]) == (ID, 1)
    assert calibrated["cases"] == 1


def test_an_operation_is_asked_for_once():
    twice = [{"id": ID, "care": cared(ESO_40)}] * 2

    assert [each["field"] for each in asked("outcomes", operations=twice)["faults"]] == ["operations.1"]
