"""Whether a pushed record may enter: what it says of itself, then, under the feed's lock, how it fits the ledger."""

from __future__ import annotations

import hashlib
from datetime import datetime
from typing import Any
from uuid import UUID

from clinic.ledger.commands import Entry
from clinic.ledger.heads import RETRACTION
from clinic.sync import carried
from clinic.sync.envelope import Envelope, Pushed, as_uuid
from clinic.sync.kinds import KINDS
from clinic.sync.kinds.kind import Incoming, Kind, Owner
from clinic.sync.known import Known
from clinic.sync.receipt import is_genuine
from clinic.sync.result import Rejected
from clinic.sync.sender import Sender
from planner.canonical import canonical
from planner.codec import read_body
from planner.errors import Refused


def examine(clinic: UUID, sender: Sender, pushed: Pushed, *, now: datetime) -> Incoming[Any]:
    """The record, found good by itself; Rejected otherwise. Nothing is asked of the ledger.

    What the sender carries for another is judged as that one's (:mod:`clinic.sync.carried`).

    What comes with a genuine receipt was judged when the server took it first. It may come by anybody's hand, and the
    rules of its kind are not asked again: what was allowed in its time (a plan signed before it was replaced) must not
    fail for what came later.
    """
    envelope = pushed.envelope
    kind = _kind(envelope)
    vouched = pushed.receipt is not None and is_genuine(pushed.receipt, envelope)
    if not vouched:
        if pushed.seal is not None and envelope.author != sender.username:
            sender = carried.maker(clinic, pushed, now=now)
        _require_ones_own(pushed, kind, sender)
    supersedes = tuple(map(as_uuid, envelope.supersedes))
    if len(set(supersedes)) != len(supersedes):
        raise Rejected("supersedes_repeated", "A superseded record is named twice.", field="supersedes")
    if as_uuid(envelope.id) in supersedes:
        raise Rejected("supersedes_itself", "A record cannot supersede itself.", field="supersedes")
    value, text = _read(pushed)
    entry = Entry(
        id=as_uuid(envelope.id),
        kind=kind.name,
        patient=as_uuid(envelope.patient),
        author=envelope.author,
        device=as_uuid(envelope.device),
        recorded_at=envelope.recorded_at,
        supersedes=supersedes,
        body=text,
        digest=envelope.digest,
        about=kind.about(value),
    )
    incoming = Incoming(entry=entry, body=value, sender=sender, vouched=vouched)
    if not vouched:
        kind.check(incoming)
    return incoming


def _require_ones_own(pushed: Pushed, kind: Kind[Any], sender: Sender) -> None:
    envelope = pushed.envelope
    if envelope.author != sender.username:
        if pushed.receipt is not None:
            text = "The receipt of this record, which another account made, is not one that this server gave."
            raise Rejected("receipt_invalid", text, field="receipt")
        raise Rejected("author_differs", "The record was made by another account.", field="author")
    if as_uuid(envelope.device) not in sender.devices:
        text = "The record was made on a device that this account never signed in from."
        raise Rejected("device_unknown", text, field="device", retryable=True)
    if sender.role not in kind.writers:
        raise Rejected("role_may_not", f"This role may not write a {kind.name}.", field="kind")


def references(incoming: Incoming[Any]) -> set[UUID]:
    """Every record that this one refers to."""
    entry = incoming.entry
    return {entry.patient, *entry.supersedes, *KINDS[entry.kind].references(incoming.body)}


def admit(incoming: Incoming[Any], known: Known) -> None:
    """Rejected unless the record fits the ledger."""
    entry = incoming.entry
    if entry.patient != entry.id:
        known.find(entry.patient, kind=_anchor(entry, known), patient=entry.patient, where="patient")
    for superseded in entry.supersedes:
        known.find(superseded, kind=entry.kind, patient=entry.patient, where="supersedes")
    if incoming.vouched:
        _admit_again(incoming, known)
    else:
        KINDS[entry.kind].fit(incoming, known)


def _admit_again(incoming: Incoming[Any], known: Known) -> None:
    if incoming.entry.author not in known.authors:
        text = "The account that made this record is no longer known here. An administrator can make it anew."
        raise Rejected("author_unknown", text, field="author", retryable=True)
    for reference in references(incoming) - {incoming.entry.id}:
        known.require(reference)


def _anchor(entry: Entry, known: Known) -> str:
    """The kind of record that ``entry`` stands with: a patient, or the first version of what belongs to the clinic."""
    if KINDS[entry.kind].owner is Owner.CLINIC:
        return entry.kind
    first = known.records.get(entry.patient)
    is_of_clinic = first is not None and KINDS[first.kind].owner is Owner.CLINIC
    return first.kind if first and is_of_clinic and entry.kind == RETRACTION else "patient"


def _kind(envelope: Envelope) -> Kind[Any]:
    try:
        return KINDS[envelope.kind]
    except KeyError:
        text = "The server does not know this kind of record."
        raise Rejected("kind_unknown", text, field="kind") from None


def _read(pushed: Pushed) -> tuple[object, str]:
    envelope, body = pushed.envelope, pushed.body
    try:
        value = read_body(envelope.kind, body)
    except Refused as refused:
        fault = refused.faults[0]
        raise Rejected(fault.code, fault.text, field=f"body.{fault.field}".rstrip(".")) from refused
    # Only now: what the codec took is neither endlessly deep nor full of odd numbers.
    text = canonical(body) if pushed.text is None else pushed.text
    if hashlib.sha256(text.encode()).hexdigest() != envelope.digest:
        raise Rejected("digest_mismatch", "The digest does not belong to the body.", field="digest")
    return value, text
