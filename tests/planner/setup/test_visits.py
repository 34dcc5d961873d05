"""A clinic's own visits after an operation: bounded, in order, and null in every practice of before."""

import pytest

from planner.codec import read, write
from planner.errors import Refused
from planner.records.practice import Practice
from planner.setup import check_practice, form
from planner.setup.visits import USUAL_VISITS, usual_visits

BEFORE = {"schema": 1, "decided_by": "Dr. Mira Example", "reason": "Agreed by all of us."}


def practice(*visits):
    told = [{"name": name, "first_day": first, "last_day": last} for name, first, last in visits]
    return BEFORE | {"visits": told}


def test_a_practice_of_before_opens_and_leaves_the_visits_to_common_practice():
    old = read(Practice, BEFORE)

    check_practice(old)
    assert old.visits is None
    assert usual_visits(old) == usual_visits(None)
    assert usual_visits(None).planned == USUAL_VISITS


def test_own_visits_are_told_in_the_order_of_their_days_with_who_decided():
    own = usual_visits(read(Practice, practice(("Week 6", 40, 50), ("Day 1", 1, 1))))

    assert [each.name for each in own.planned] == ["Day 1", "Week 6"]
    assert (own.is_own, own.provenance.source) == (True, "Dr. Mira Example: Agreed by all of us.")


@pytest.mark.parametrize(
    ("visits", "field", "allowed"),
    [
        ([("Week 1", 7, 5)], "visits.0.last_day", "7 or later"),
        ([("Day 0", 0, 1)], "visits.0.first_day", "a whole number from 1 to 20000 days after the operation"),
        ([("Late", 1, 20001)], "visits.0.last_day", "a whole number from 1 to 20000 days after the operation"),
        ([("", 1, 2)], "visits.0.name", "a text of 1 to 40 characters"),
        ([], "visits", "a list of 1 to 20 items"),
        ([(f"Visit {n}", n, n) for n in range(1, 22)], "visits", "a list of 1 to 20 items"),
    ],
)
def test_a_visit_that_cannot_be_is_refused_with_its_field_and_what_is_allowed(visits, field, allowed):
    with pytest.raises(Refused) as caught:
        check_practice(read(Practice, practice(*visits)))

    assert [(fault.field, fault.allowed) for fault in caught.value.faults] == [(field, allowed)]


def test_two_visits_have_two_names():
    with pytest.raises(Refused) as caught:
        read(Practice, practice(("Week 1", 5, 10), ("Week 1", 6, 11)))

    assert [fault.field for fault in caught.value.faults] == ["visits.1"]


def test_the_form_shows_the_usual_visits_and_those_that_stand():
    made = form(read(Practice, practice(("Week 6", 40, 50))))

    assert made.visits.usual == USUAL_VISITS
    assert write(made.visits.standing) == [{"name": "Week 6", "first_day": 40, "last_day": 50}]
