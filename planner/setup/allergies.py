"""Allergies for whoever prepares a room: of the signed record, of what is newer, and of the person's other entries."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.records.patient import Known, Patient


def allergies_words(signed: Patient, now: Patient | None = None, other_entries: Sequence[Patient] = ()) -> str:
    """Nothing that any of the records says is left out; empty where none says anything."""
    told = "; ".join(_told(signed, now, other_entries))
    everybody = (signed, *([now] if now else []), *other_entries)
    if any(each.latex is Known.YES for each in everybody) and "latex" not in told.casefold():
        return f"{told}; latex" if told else "latex"
    return told


def _told(signed: Patient, now: Patient | None, other_entries: Sequence[Patient]) -> Iterator[str]:
    if signed.allergies:
        yield signed.allergies
    if now and now.allergies != signed.allergies:
        yield f"newer than the signature: {now.allergies or 'no longer entered'}"
    known = {signed.allergies, now.allergies if now else ""}
    for each in other_entries:
        if each.allergies and each.allergies not in known:
            yield f"entered under number {each.hospital_number}: {each.allergies}"
