"""Allergies for whoever prepares a room: of the signed record, of what is newer, and of the person's other entries."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.card.alerts.entered import says_nothing
from planner.records.patient import Known, Patient

NEWER = "newer than the signature: "


def allergies_words(signed: Patient, now: Patient | None = None, other_entries: Sequence[Patient] = ()) -> str:
    """Nothing that any of the records warns of is left out; empty where none says anything.

    That none is known is not said beside what another record, or the question for latex, warns of; but a newer record
    in which a signed allergy no longer stands is.
    """
    everybody = (signed, *([now] if now else []), *other_entries)
    is_latex = any(each.latex is Known.YES for each in everybody)
    is_any = is_latex or any(_warns(each.allergies) for each in everybody)
    told = "; ".join(
        f"{whence}{allergies}"
        for whence, allergies in _told(signed, now, other_entries)
        if _warns(allergies) or not is_any or (whence == NEWER and _warns(signed.allergies))
    )
    if is_latex and "latex" not in told.casefold():
        return f"{told}; latex" if told else "latex"
    return told


def _told(signed: Patient, now: Patient | None, other_entries: Sequence[Patient]) -> Iterator[tuple[str, str]]:
    """Where each comes from, and what it says."""
    if signed.allergies:
        yield "", signed.allergies
    if now and now.allergies != signed.allergies:
        yield NEWER, now.allergies or "no longer entered"
    known = {signed.allergies, now.allergies if now else ""}
    for each in other_entries:
        if each.allergies and each.allergies not in known:
            yield f"entered under number {each.hospital_number}: ", each.allergies


def _warns(allergies: str) -> bool:
    return bool(allergies) and not says_nothing(allergies)
