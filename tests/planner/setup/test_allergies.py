"""Whoever prepares a room reads every allergy that any record of the person tells, and where it comes from."""

from planner.records.patient import Known
from planner.setup.allergies import allergies_words
from tests.planner.setup.prepared import patient


def test_the_signed_record_is_told_as_it_is_and_silence_stays_silence():
    assert allergies_words(patient(allergies="iodine")) == "iodine"
    assert allergies_words(patient()) == allergies_words(patient(), patient(), (patient(),)) == ""


def test_what_is_newer_is_told_beside_what_was_signed():
    signed = patient(allergies="iodine")

    assert allergies_words(signed, patient(allergies="penicillin")) == "iodine; newer than the signature: penicillin"
    assert allergies_words(signed, patient()) == "iodine; newer than the signature: no longer entered"
    assert allergies_words(signed, patient(allergies="iodine", full_name="Ana Other")) == "iodine"


def test_what_only_another_entry_says_is_told_with_its_number_and_once():
    other = patient(allergies="penicillin", hospital_number="OI-0777")

    assert allergies_words(patient(), None, (other,)) == "entered under number OI-0777: penicillin"
    assert allergies_words(patient(allergies="penicillin"), None, (other,)) == "penicillin"


def test_latex_is_among_them_wherever_it_is_known():
    borne_not = patient(latex=Known.YES.value)

    assert allergies_words(patient(), None, (borne_not,)) == allergies_words(borne_not) == "latex"
    assert allergies_words(patient(allergies="iodine"), borne_not).endswith("; latex")
    assert allergies_words(patient(allergies="Latex gloves", latex="yes")) == "Latex gloves"


def test_none_known_is_said_alone_and_never_beside_what_is_not_borne():
    none = patient(allergies="none known")

    assert allergies_words(none) == "none known"
    assert allergies_words(patient(allergies="none known", latex="yes")) == "latex"
    assert allergies_words(none, patient(allergies="NKDA", latex="yes")) == "latex"
    assert allergies_words(none, patient(allergies="iodine")) == "newer than the signature: iodine"
    assert allergies_words(patient(allergies="iodine"), None, (none,)) == "iodine"
    assert allergies_words(patient(allergies="iodine"), none) == "iodine; newer than the signature: none known"
