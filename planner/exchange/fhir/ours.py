"""Resources of ours: the records that they carry, if nothing beside them was changed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Final

from planner.errors import Fault, Refused
from planner.exchange.fhir.carrying import carries, record_in
from planner.exchange.fhir.earlier import as_before
from planner.exchange.fhir.exporting import of_records
from planner.exchange.fhir.intake import Brought, Intake
from planner.exchange.fhir.ledger import Ledger, Told
from planner.exchange.fhir.names import Made
from planner.exchange.fhir.row import Entry, Fate
from planner.records.plan import Signature

MADE_AGAIN: Final = frozenset({"DocumentReference", "CodeSystem"})
"""What is exported beside records and made again here."""
ID_LENGTH: Final = 36
OTHER_REFERENCES: Final = frozenset({"patient_a", "patient_b", "after"})


def take_ours(entries: Sequence[Entry], intake: Intake) -> None:
    """Every resource that carries a record, and those that follow from it."""
    read: dict[str, tuple[Entry, Told]] = {}
    for entry in entries:
        if carries(entry.resource):
            try:
                _add(entry, record_in(entry.resource), read)
            except Refused as why:
                intake.rows[entry.place] = entry.refused(why)
    if not read:
        return
    made: Made = {
        (str(each["resourceType"]), str(each["id"])): each
        for each in of_records(Ledger(tuple(record for _, record in read.values())))
    }
    before = as_before(made, [record for _, record in read.values()])
    altered = _altered(entries, made, before, read)
    known = {
        record_id
        for record_id, (entry, record) in read.items()
        if intake.offer(entry, _brought(record), altered.get(record_id) or _hindrance(record, intake))
    }
    for entry in entries:
        if entry.place not in intake.rows:
            _follow(entry, _owner(entry, made), known, intake)


def _follow(entry: Entry, owner: str, known: set[str], intake: Intake) -> None:
    """What follows from a record shares its fate; what is foreign is left."""
    if owner in known:
        intake.rows[entry.place] = entry.row(Fate.WITH_ITS_RECORD, owner)
    elif owner:
        text = "The record that it follows from is not taken."
        intake.rows[entry.place] = entry.faulty(Fault(code="record_not_taken", text=text, value=owner))
    elif entry.kind in MADE_AGAIN:
        intake.rows[entry.place] = entry.row(Fate.MADE_AGAIN)


def _add(entry: Entry, record: Told, read: dict[str, tuple[Entry, Told]]) -> None:
    if record.id in read:
        text = "This record stands in the Bundle twice."
        raise Refused(Fault(code="repeated", text=text, value=record.id, allowed="each record once"))
    read[record.id] = entry, record


def _altered(
    entries: Sequence[Entry], made: Made, before: Made, read: Mapping[str, tuple[Entry, Told]]
) -> dict[str, Fault]:
    """The records of which a resource in the Bundle says something else than they do."""
    found: dict[str, Fault] = {}
    for entry in entries:
        owner = _owner(entry, made)
        key = entry.kind, str(entry.resource.get("id"))
        if owner and entry.resource not in (made[key], before.get(key)):
            text = f"{entry.name} says something else than the record that it carries or follows from."
            found.setdefault(owner, _fault(text, entry))
    for record_id, (entry, record) in read.items():
        if (entry.kind, record_id) not in made:
            found.setdefault(record_id, _fault(f"A {entry.kind} does not carry a {record.kind}.", entry))
    return found


def _fault(text: str, entry: Entry) -> Fault:
    return Fault(code="altered", text=text, value=entry.name, allowed="the resources as they were exported")


def _owner(entry: Entry, made: Made) -> str:
    """The record that a resource of ours is made of, told by its id; empty for any other."""
    resource_id = str(entry.resource.get("id"))
    return resource_id[:ID_LENGTH] if (entry.kind, resource_id) in made else ""


def _hindrance(record: Told, intake: Intake) -> Fault | None:
    if isinstance(record.value, Signature) and record.value.signer_name != intake.bringer.full_name:
        text = "A signature is brought by the person who signed, and by nobody else."
        name = record.value.signer_name
        return Fault(code="signer_differs", text=text, value=name, allowed=intake.bringer.full_name)
    envelope = record.envelope
    for needed in (envelope.patient, *envelope.supersedes, *_named(record.body)):
        if needed != record.id and not intake.knows(needed):
            text = "A record that this one refers to is neither here nor taken."
            return Fault(code="reference_unknown", text=text, value=needed, allowed="a record of this Bundle or clinic")
    return None


def _named(body: object) -> Iterator[str]:
    """The records that a body refers to, told by the names of its fields; a case and an option refer to none."""
    if isinstance(body, dict):
        for name, value in body.items():
            if isinstance(value, str) and (name.endswith("_id") or name in OTHER_REFERENCES):
                yield value
            elif name not in ("case", "option"):
                yield from _named(value)
    elif isinstance(body, list):
        for each in body:
            yield from _named(each)


def _brought(record: Told) -> Brought:
    envelope = record.envelope
    return Brought(
        id=record.id,
        kind=record.kind,
        patient=envelope.patient,
        supersedes=envelope.supersedes,
        digest=envelope.digest,
        body=record.body if isinstance(record.body, dict) else {},
    )
