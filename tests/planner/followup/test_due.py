"""Who is to be seen: each visit of an operation is in one state, and today is told."""

import json
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.codec import read, write
from planner.desk import answer
from planner.followup.due import Operated, Question, due
from planner.records.follow_up import FollowUp, PlannedVisit
from planner.setup.visits import USUAL_VISITS
from planner.values.follow_up import VisitState
from tests.planner.followup.aftercare import ID, OPERATED_ON, OWN, came, on


def followed(today, *follow_ups, **more):
    asked = Question(
        today=today, operations=(Operated(id=ID, operated_on=OPERATED_ON, follow_ups=tuple(follow_ups), **more),)
    )
    (one,) = due(asked).operations
    return one


def states(one):
    return [each.state.value for each in one.visits]


@pytest.mark.parametrize(
    ("days", "state"), [(0, "ahead"), (1, "due"), (2, "due"), (3, "overdue"), (4, "overdue"), (5, "missed")]
)
def test_the_first_visit_is_due_then_overdue_and_missed_once_the_next_begins(days, state):
    assert followed(on(days)).visits[0].state == state


def test_the_usual_visits_are_counted_from_the_operation():
    """25 November 2026 and 42 to 56 days, by a paper calendar: 6 to 20 January 2027."""
    sixth = followed(OPERATED_ON).visits[2]

    assert (sixth.name, sixth.from_on, sixth.to_on) == ("Weeks 6 to 8", "2027-01-06", "2027-01-20")
    assert sixth.words == "Weeks 6 to 8: from 6 January 2027 to 20 January 2027."


def test_a_kept_visit_is_seen_and_the_next_one_is_named():
    one = followed(on(8), came("Day 1", 1))

    assert states(one)[:3] == ["seen", "due", "ahead"]
    assert one.next.name == "Week 1"


def test_who_kept_a_later_visit_does_not_owe_the_earlier_ones():
    one = followed(on(60), came("Weeks 6 to 8", 44))

    assert states(one)[:4] == ["missed", "missed", "seen", "ahead"]


def test_an_overdue_visit_says_since_when():
    visit = followed(on(12)).next

    assert (visit.name, visit.state, visit.days_over) == ("Week 1", VisitState.OVERDUE, 2)
    assert visit.words == "Week 1: overdue since 5 December 2026, 2 days."


def test_a_visit_plans_anew_what_lies_ahead_of_it_and_nothing_behind_it():
    soon = (PlannedVisit(name="Week 3", first_day=18, last_day=24),)
    one = followed(on(20), came("Week 1", 7, ahead=soon))

    assert [each.name for each in one.visits] == ["Day 1", "Week 1", "Week 3"]
    assert states(one) == ["missed", "seen", "due"]


def test_no_visits_ahead_ends_the_plan():
    one = followed(on(300), came("Month 6", 180, ahead=()))

    assert one.next is None


def test_what_was_not_planned_is_told_beside_it():
    assert followed(on(30), came("Painful eye", 4)).unplanned == (on(4),)


def test_another_operation_ends_the_visits_of_the_first():
    one = followed(on(90), ended_on=on(50))

    assert [each.name for each in one.visits] == ["Day 1", "Week 1", "Weeks 6 to 8"]
    assert set(states(one)) == {"missed"}
    assert one.next is None


def test_the_longest_overdue_stands_first():
    ids = [f"00000000-0000-7000-8000-{place:012x}" for place in range(3)]
    operated = [
        Operated(id=id_, operated_on=day)
        for id_, day in zip(ids, ("2026-11-21", "2026-11-22", "2026-11-23"), strict=True)
    ]
    found = due(Question(today="2026-11-25", operations=tuple(operated)))

    assert found.overdue == (ids[0], ids[1])
    assert found.due == (ids[2],)


@given(
    days=st.integers(0, 2500),
    kept=st.sets(st.sampled_from([visit.name for visit in USUAL_VISITS])),
)
def test_nothing_is_lost_and_at_most_one_visit_is_to_be_kept_now(days, kept):
    first = {visit.name: visit.first_day for visit in USUAL_VISITS}
    one = followed(on(days), *(came(name, first[name]) for name in sorted(kept)))

    assert [each.name for each in one.visits] == [visit.name for visit in USUAL_VISITS]
    assert {each.name for each in one.visits if each.state is VisitState.SEEN} == kept
    assert sum(each.state in (VisitState.DUE, VisitState.OVERDUE) for each in one.visits) <= 1


def test_the_desk_answers_with_words_and_provenance():
    body = {"id": ID, "operated_on": OPERATED_ON}
    said = json.loads(answer(json.dumps({"ask": "visits_due", "today": on(1), "operations": [body]})))["answer"]

    assert said["due"] == [ID]
    assert said["operations"][0]["next"]["words"] == "Day 1: due now, until 27 November 2026."
    assert {each["provenance"]["mark"] for each in said["statements"]} == {"common practice"}


def test_the_clinic_s_own_visits_take_the_place_of_the_usual_ones_and_are_told_as_its_own():
    asked = {"ask": "visits_due", "today": on(30), "operations": [{"id": ID, "operated_on": OPERATED_ON}]}
    own = json.loads(answer(json.dumps(asked | {"practice": OWN})))["answer"]
    usual = json.loads(answer(json.dumps(asked | {"practice": OWN | {"visits": None}})))["answer"]

    assert [each["name"] for each in own["operations"][0]["visits"]] == ["Day 1", "Week 4"]
    assert own["operations"][0]["visits"][1]["words"] == "Week 4: due now, until 29 December 2026."
    assert own["statements"][0]["text"] == "Planned in this clinic unless a visit planned otherwise: Day 1, Week 4."
    assert own["statements"][0]["provenance"] == {
        "mark": "this clinic's practice",
        "source": "Dr. Mira Example: Most live nearby.",
    }
    assert usual == json.loads(answer(json.dumps(asked)))["answer"]
    assert usual["statements"][0]["provenance"]["mark"] == "common practice"


def test_what_a_visit_planned_anew_stands_before_the_clinic_s_own_visits():
    anew = [{"name": "Month 3", "first_day": 80, "last_day": 100}]
    body = {"id": ID, "operated_on": OPERATED_ON, "follow_ups": [write(came("Day 1", 1)) | {"ahead": anew}]}
    asked = {"ask": "visits_due", "today": on(2), "operations": [body], "practice": OWN}

    (told,) = json.loads(answer(json.dumps(asked)))["answer"]["operations"]
    assert [each["name"] for each in told["visits"]] == ["Day 1", "Month 3"]


def test_the_end_of_the_calendar_is_no_traceback():
    body = {"id": ID, "operated_on": "9999-12-31"}
    said = json.loads(answer(json.dumps({"ask": "visits_due", "today": "9999-12-31", "operations": [body]})))

    assert "answer" in said


def test_a_follow_up_is_read_as_the_record_says_it():
    body = {"schema": 1, "operation_id": ID, "visit": "Week 1", "seen_on": on(7)}

    assert read(FollowUp, body) == came("Week 1", 7)
    assert date.fromisoformat(on(7)) - date.fromisoformat(OPERATED_ON) == timedelta(days=7)
