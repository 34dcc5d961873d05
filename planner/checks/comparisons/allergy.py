"""What is said of allergies against what every record of the patient says, the card's first."""

from __future__ import annotations

from planner.card.alerts.entered import says_nothing
from planner.checks.round import Round
from planner.records.patient import Known, Patient
from planner.records.theatre_check import Entry
from planner.values.checks import Stop


def compare(entry: Entry, check: Round) -> Stop | None:
    """None said where some are written, and the card meant where it has none. Another one is told, not compared."""
    written = _written(check.patient)
    elsewhere = tuple(dict.fromkeys(text for each in check.also if (text := _written(each.patient))))
    said = {"none": "None is known", "as_card": "Those on the card"}.get(entry.answer or "")
    is_known = bool(written or elsewhere)
    is_at_odds = (entry.answer == "none" and is_known) or (entry.answer == "as_card" and not is_known)
    if not is_at_odds:
        return None
    card = (written or check.patient.allergies).removesuffix(".") or "no allergy is entered"
    return Stop(
        code="allergy_differs",
        step=entry.step,
        text="What was said of allergies is not what the card says.",
        differences=(
            f"Said: {said}. The card says: {card}.",
            *(f"A newer record, or another entry of this person, says: {text}." for text in elsewhere),
        ),
    )


def _written(patient: Patient) -> str:
    """What is not borne. Latex is asked for by itself, and need not stand among the allergies too."""
    allergies = "" if says_nothing(patient.allergies) else patient.allergies
    if patient.latex is not Known.YES or "latex" in allergies.casefold():
        return allergies
    return f"{allergies}, latex".removeprefix(", ")
