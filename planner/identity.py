"""Whether two patients may be one person who was entered twice.

A suggestion for people to look at, never a decision: nothing is joined without a person's word. The limits are
common practice in matching records, chosen to ask too often rather than too seldom: the same hospital number; or names
that differ by at most one slip in five letters, in whatever order they are written, with the same birth date, or one
with day and month exchanged.
"""

from __future__ import annotations

import unicodedata
from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations
from typing import Final

from planner.records.patient import Patient

LETTERS_PER_SLIP: Final = 5


class Likeness(StrEnum):
    """Why two patients may be one."""

    SAME_NUMBER = "same_number"
    SIMILAR_NAME = "similar_name_and_birth_date"
    EXCHANGED_DAY = "similar_name_and_exchanged_day_and_month"
    """The birth dates are not the same: day and month stand the other way round."""


@dataclass(frozen=True, kw_only=True)
class Pair:
    """Two patients, by whatever the caller names them, in the caller's order."""

    first: str
    second: str
    likeness: Likeness


def likeness(one: Patient, other: Patient) -> Likeness | None:
    """Why these two may be one person, or None."""
    if _number(one) == _number(other):
        return Likeness.SAME_NUMBER
    if _birth(one) == _birth(other) and _similar(_name(one), _name(other)):
        return Likeness.SIMILAR_NAME if one.born_on == other.born_on else Likeness.EXCHANGED_DAY
    return None


def entered_twice(patients: Mapping[str, Patient]) -> tuple[Pair, ...]:
    """Every pair that may be one person. Only those with a number or a birth date in common are compared."""
    rooms: dict[object, list[str]] = defaultdict(list)
    for name, patient in patients.items():
        rooms["number", _number(patient)].append(name)
        rooms["birth", _birth(patient)].append(name)
    place = {name: number for number, name in enumerate(patients)}
    found: dict[tuple[str, str], Likeness] = {}
    for names in rooms.values():
        for first, second in combinations(names, 2):
            if why := likeness(patients[first], patients[second]):
                found[first, second] = why
    ordered = sorted(found, key=lambda pair: (place[pair[0]], place[pair[1]]))
    return tuple(Pair(first=first, second=second, likeness=found[first, second]) for first, second in ordered)


def _number(patient: Patient) -> str:
    """Letters and digits alone: how a number is spaced or hyphenated means nothing."""
    kept = "".join(each for each in patient.hospital_number.casefold() if each.isalnum())
    return kept or patient.hospital_number


def _birth(patient: Patient) -> tuple[str, frozenset[str]]:
    """Year, and day and month in whichever order."""
    year, month, day = patient.born_on.split("-")
    return year, frozenset((month, day))


def _name(patient: Patient) -> str:
    """Without accents, case and punctuation, its parts in alphabetical order."""
    plain = unicodedata.normalize("NFKD", patient.full_name.casefold())
    spaced = "".join(each if each.isalnum() else " " for each in plain if not unicodedata.combining(each))
    return " ".join(sorted(spaced.split()))


def _similar(one: str, other: str) -> bool:
    allowed = max(1, min(len(one), len(other)) // LETTERS_PER_SLIP)
    return abs(len(one) - len(other)) <= allowed and _slips(one, other) <= allowed


def _slips(one: str, other: str) -> int:
    """Letters put in, left out, changed or exchanged with their neighbour (optimal string alignment)."""
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, start=1):
        before, last, row = row, before, [i]
        for j, counterpart in enumerate(other, start=1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (letter != counterpart))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == counterpart:
                cost = min(cost, last[j - 2] + 1)
            row.append(cost)
    return row[-1]
