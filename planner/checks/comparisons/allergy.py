"""What is said of allergies against what the patient's record says."""

from __future__ import annotations

from planner.checks.round import Round
from planner.records.patient import Known, Patient
from planner.records.theatre_check import Entry
from planner.values.checks import Stop


def compare(entry: Entry, check: Round) -> Stop | None:
    """None said where some are written, and the card meant where it has none. Another one is told, not compared."""
    written = _written(check.patient)
    said = {"none": "None is known", "as_card": "Those on the card"}.get(entry.answer or "")
    is_at_odds = (entry.answer == "none" and written) or (entry.answer == "as_card" and not written)
    if not is_at_odds:
        return None
    return Stop(
        code="allergy_differs",
        step=entry.step,
        text="What was said of allergies is not what the card says.",
        differences=(f"Said: {said}. The card says: {written or 'no allergy is entered'}.",),
    )


def _written(patient: Patient) -> str:
    """Latex is asked for by itself, and need not stand among the allergies too."""
    if patient.latex is not Known.YES or "latex" in patient.allergies.casefold():
        return patient.allergies
    return f"{patient.allergies}, latex".removeprefix(", ")
