"""Resources of other programs: patients and deviations are taken, everything else is told not to be."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from planner.canonical import digest
from planner.codec import read_body, write
from planner.errors import Fault, Refused
from planner.exchange.fhir import foreign
from planner.exchange.fhir.intake import Brought, Intake
from planner.exchange.fhir.names import Resource
from planner.exchange.fhir.row import Entry, Fate

DIRECTIONS: Final = ("horizontal_pd", "vertical_pd")


def take_others(entries: Sequence[Entry], intake: Intake) -> None:
    """What is left of the Bundle."""
    left = [entry for entry in entries if entry.place not in intake.rows]
    patients = dict(_patients(left, intake))
    days: dict[tuple[str, str], list[tuple[Entry, Resource]]] = {}
    for entry in left:
        if entry.place in intake.rows:
            continue
        try:
            owner, day, reading = _measured(entry, patients)
        except Refused as why:
            intake.rows[entry.place] = entry.refused(why)
        else:
            days.setdefault((owner, day), []).append((entry, reading))
    for (owner, day), measured in days.items():
        _examination(owner, day, measured, intake)


def _patients(entries: Sequence[Entry], intake: Intake) -> list[tuple[str, str]]:
    """The ids of the patients by the ways in which they are referred to."""
    found = []
    for entry in entries:
        if entry.kind != "Patient":
            continue
        try:
            body = foreign.patient_body(entry.resource)
            record_id = foreign.made_id(intake.bringer.clinic, entry.name, str(body["hospital_number"]))
            record = _judged("patient", record_id, record_id, body)
        except Refused as why:
            intake.rows[entry.place] = entry.refused(why)
            continue
        if intake.offer(entry, record):
            _say_unread(entry, foreign.PATIENT_READ, intake)
            found += [(entry.name, record_id), (entry.full_url, record_id)]
    return found


def _measured(entry: Entry, patients: Mapping[str, str]) -> tuple[str, str, Resource]:
    if entry.kind != "Observation" or not foreign.is_deviation(entry.resource):
        allowed = "Patient, and Observation of a deviation in our code system"
        raise Refused(Fault(code="not_known", text="This is not taken.", value=entry.name, allowed=allowed))
    said = foreign.subject_of(entry.resource)
    if said not in patients:
        text = "The patient of this Observation is not taken."
        raise Refused(Fault(code="reference_unknown", text=text, field="subject", value=said[:60]))
    return patients[said], foreign.day_of(entry.resource), foreign.reading_of(entry.resource)


def _examination(owner: str, day: str, measured: Sequence[tuple[Entry, Resource]], intake: Intake) -> None:
    """All readings of a patient and day as one examination, or none of them."""
    entries = [entry for entry, _ in measured]
    try:
        body: Resource = {"schema": 1, "examined_on": day, "readings": _joined([reading for _, reading in measured])}
        names = sorted(entry.name for entry in entries)
        record = _judged("examination", foreign.made_id(intake.bringer.clinic, owner, day, *names), owner, body)
    except Refused as why:
        intake.rows.update({entry.place: entry.refused(why) for entry in entries})
        return
    first, *others = entries
    known = intake.offer(first, record)
    for entry in others:
        row = intake.rows[first.place]
        intake.rows[entry.place] = replace(row, place=entry.place, resource=entry.name)
        if known and row.fate is Fate.TAKEN:
            intake.rows[entry.place] = entry.row(Fate.WITH_ITS_RECORD, record.id)
    for entry in entries if known else ():
        _say_unread(entry, foreign.OBSERVATION_READ, intake)


def _joined(readings: Sequence[Resource]) -> list[Resource]:
    """Both directions of one reading together."""
    found: dict[tuple[tuple[str, str], ...], Resource] = {}
    for reading in readings:
        key = tuple(sorted((name, str(value)) for name, value in reading.items() if name not in DIRECTIONS))
        there = found.setdefault(key, {})
        if any(name in there and name in reading for name in DIRECTIONS):
            text = "Two readings are told apart by nothing."
            raise Refused(Fault(code="repeated", text=text, field="component", allowed="another repeat for each"))
        there.update(reading)
    return list(found.values())


def _judged(kind: str, record_id: str, patient: str, said: Resource) -> Brought:
    """The record, after the codec's own limits; its body is written whole."""
    body = write(read_body(kind, said))
    if not isinstance(body, dict):
        raise TypeError("a body is an object")
    return Brought(id=record_id, kind=kind, patient=patient, supersedes=(), digest=digest(body), body=body)


def _say_unread(entry: Entry, known: frozenset[str], intake: Intake) -> None:
    intake.rows[entry.place] = replace(intake.rows[entry.place], text=foreign.unread(entry.resource, known))
