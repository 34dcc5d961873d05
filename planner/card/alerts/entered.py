"""Where what a person entered comes from, and why what nobody entered is asked."""

from typing import Final

from planner.provenance import Mark, Provenance
from planner.values.alert import AlertKind

ENTERED: Final = Provenance(mark=Mark.MEASURED, source="entered in the patient's record")
ASKED: Final = Provenance(mark=Mark.COMMON_PRACTICE, source="asked before every operation")

NOTHING: Final = frozenset({"none", "none known", "no", "nil", "not any", "no known allergies", "no allergies"})
"""An answer that there is nothing is told, but warns of nothing."""


def kind_of(said: str) -> AlertKind:
    """Whether what was entered warns, only tells, or is still to be asked."""
    if not said:
        return AlertKind.ASK
    return AlertKind.TELL if said.strip(" .").lower() in NOTHING else AlertKind.ALERT
