"""A patient who was entered twice is suggested; two people are not."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.identity import Likeness, Pair, entered_twice, likeness
from planner.records.patient import Patient


def patient(name="Ines Ferreira", born_on="2019-04-02", number="H-1042"):
    return Patient(full_name=name, born_on=born_on, hospital_number=number)


@pytest.mark.parametrize("number", ["H-1042", "h 1042", "H1042", " H-10-42"])
def test_the_same_number_is_enough_however_it_is_written(number):
    assert likeness(patient(), patient("Somebody Else", "1950-01-01", number)) is Likeness.SAME_NUMBER


@pytest.mark.parametrize(
    ("name", "born_on"),
    [
        ("Ines Ferreira", "2019-04-02"),
        ("Inês Ferreira", "2019-04-02"),
        ("FERREIRA, Ines", "2019-04-02"),
        ("Ines Fereira", "2019-04-02"),
        ("Inse Ferreira", "2019-04-02"),
    ],
)
def test_a_similar_name_with_the_birth_date_is_suggested(name, born_on):
    assert likeness(patient(), patient(name, born_on, "other")) is Likeness.SIMILAR_NAME


@pytest.mark.parametrize("name", ["Ines Ferreira", "Inês Fereira"])
def test_day_and_month_the_other_way_round_are_suggested_and_told_apart(name):
    assert likeness(patient(), patient(name, "2019-02-04", "other")) is Likeness.EXCHANGED_DAY


@pytest.mark.parametrize(
    ("name", "born_on"),
    [
        ("Ines Ferreira", "2019-04-03"),
        ("Ines Ferreira", "2018-04-02"),
        ("Rosa Ferreira", "2019-04-02"),
        ("Ines Pereira Costa", "2019-04-02"),
    ],
)
def test_another_birth_date_or_another_name_is_another_person(name, born_on):
    """Twins share a birth date and a family name, and have two given names."""
    assert likeness(patient(), patient(name, born_on, "other")) is None


names = st.text(alphabet="abé -'", min_size=1, max_size=8).filter(str.strip)
dates = st.sampled_from(["2019-04-02", "2019-02-04", "2019-04-03"])
people = st.builds(patient, names, dates, st.sampled_from(["1", "-1-", "2", "3", "-"]))


@given(people, people)
def test_it_does_not_matter_who_is_named_first(one, other):
    assert likeness(one, other) == likeness(other, one)


@given(people)
def test_everybody_is_like_themselves(one):
    assert likeness(one, one) is Likeness.SAME_NUMBER


@given(st.lists(people, max_size=12))
def test_the_pairs_are_those_that_comparing_each_with_each_would_find(everybody):
    patients = {str(number): one for number, one in enumerate(everybody)}
    each_with_each = [
        Pair(first=first, second=second, likeness=why)
        for first, second in combinations(patients, 2)
        if (why := likeness(patients[first], patients[second]))
    ]

    assert list(entered_twice(patients)) == each_with_each
