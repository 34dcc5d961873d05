"""Where what a person entered comes from, and why what nobody entered is asked."""

from typing import Final

from planner.provenance import Mark, Provenance
from planner.values.alert import AlertKind

ENTERED: Final = Provenance(mark=Mark.MEASURED, source="entered in the patient's record")
ASKED: Final = Provenance(mark=Mark.COMMON_PRACTICE, source="asked before every operation")

NOTHING: Final = frozenset(
    {
        "none", "none known", "none reported", "nil", "nil known", "no", "not any", "nka", "nkda",
        "no allergy", "no allergies", "no known allergy", "no known allergies",
        "no drug allergies", "no known drug allergy", "no known drug allergies",
    }
)  # fmt: skip
"""Common practice: how notes say that there is nothing. A closed list: whatever else was written warns."""


def says_nothing(said: str) -> bool:
    """Whether what was entered is an answer that there is nothing; silence is no answer."""
    return " ".join(said.casefold().replace(".", "").split()) in NOTHING


def kind_of(said: str) -> AlertKind:
    """Whether what was entered warns, only tells, or is still to be asked."""
    if not said:
        return AlertKind.ASK
    return AlertKind.TELL if says_nothing(said) else AlertKind.ALERT
