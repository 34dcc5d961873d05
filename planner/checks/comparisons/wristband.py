"""The wristband against the patient of the card."""

from __future__ import annotations

import re

from planner.card.words import date_words
from planner.checks.comparisons.given import given
from planner.checks.round import Round
from planner.records.theatre_check import Entry
from planner.values.checks import Keys, Stop, Way

ENOUGH_DIGITS = 4
"""A number with so many digits is typed by its digits alone, which a gloved finger does on large keys.

A house rule, and only where nothing is left open: the number has no letters, or the birth date stands beside it, which
tells two people apart whose numbers differ in a letter. Letters that were typed are compared all the same.
"""


def keys_of(hospital_number: str, way: Way) -> Keys:
    """What is typed of this number."""
    is_closed = way is Way.WRISTBAND or not _has_letters(hospital_number)
    return Keys.DIGITS if is_closed and len(_digits(hospital_number)) >= ENOUGH_DIGITS else Keys.CHARACTERS


def compare(entry: Entry, check: Round) -> Stop | None:
    """Number and birth date."""
    patient = check.patient
    born_on = given(entry.born_on, "born_on")
    differences = _number_differs(entry, check, Way.WRISTBAND)
    if born_on != patient.born_on:
        differences += (f"Date of birth: {_said(born_on, patient.born_on)}.",)
    return _stop(entry, differences)


def compare_number(entry: Entry, check: Round) -> Stop | None:
    """The number alone."""
    return _stop(entry, _number_differs(entry, check, Way.WRISTBAND_NUMBER))


def _stop(entry: Entry, differences: tuple[str, ...]) -> Stop | None:
    if not differences:
        return None
    text = "The wristband and the card are not of the same patient."
    return Stop(code="wristband_differs", step=entry.step, text=text, differences=differences)


def _number_differs(entry: Entry, check: Round, way: Way) -> tuple[str, ...]:
    typed, number = given(entry.hospital_number, "hospital_number"), check.patient.hospital_number
    reduced = _digits if keys_of(number, way) is Keys.DIGITS and not _has_letters(typed) else _characters
    if reduced(typed) == reduced(number):
        return ()
    return (f"Hospital number: the wristband says {typed}, the card says {number}.",)


def _said(wristband: str, card: str) -> str:
    return f"the wristband says {date_words(wristband)}, the card says {date_words(card)}"


def _has_letters(number: str) -> bool:
    return any(map(str.isalpha, number))


def _digits(number: str) -> str:
    return re.sub(r"[^0-9]", "", number)


def _characters(number: str) -> str:
    return re.sub(r"[\W_]", "", number).upper()
