"""What the records of a person warn of when theatre is prepared and the list is made.

The signed record, what is newer, and the person's other entries: as on the card, none takes another's warning away.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.card.alerts.entered import kind_of
from planner.records.patient import Known, Patient
from planner.values.alert import AlertKind


@dataclass(frozen=True, kw_only=True)
class Health:
    """``hyperthermia`` is malignant hyperthermia in the family, ``latex`` whether latex is not borne.

    ``anticoagulants`` are what thins the blood, in the words of each record that names any; ``is_bleeding_asked`` is
    whether the present record answers that at all.
    """

    hyperthermia: Known = Known.UNKNOWN
    latex: bool = False
    anticoagulants: tuple[str, ...] = ()
    is_bleeding_asked: bool = False


NOTHING_KNOWN = Health()


def health(signed: Patient, now: Patient | None = None, other_entries: Sequence[Patient] = ()) -> Health:
    """A warning of any record stands; that there is nothing is taken from the present record alone."""
    present = now or signed
    everybody = (signed, present, *other_entries)
    in_the_family = any(each.malignant_hyperthermia_family is Known.YES for each in everybody)
    named = (each.anticoagulants for each in everybody if kind_of(each.anticoagulants) is AlertKind.ALERT)
    return Health(
        hyperthermia=Known.YES if in_the_family else present.malignant_hyperthermia_family,
        latex=any(each.latex is Known.YES for each in everybody),
        anticoagulants=tuple(dict.fromkeys(named)),
        is_bleeding_asked=kind_of(present.anticoagulants) is not AlertKind.ASK,
    )
