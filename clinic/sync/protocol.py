"""The sync protocol, version 1: how a device and the clinic's ledger come to hold the same records, each exactly once.

A record is made once, on one device, and never changes::

    {"id": UUIDv7, "kind": "patient", "clinic": UUID, "patient": UUID, "author": "name of the account",
     "device": UUID, "recorded_at": "2026-11-25T09:30:00+01:00", "supersedes": [ids], "body": {...},
     "digest": "64 hex digits"}

The server adds ``position`` (1, 2, 3, ... within the clinic, without a gap, in the order of commits), ``received_at``
and ``receipt``. Ids are lower-case UUIDs; ``digest`` is the SHA-256 of the body's canonical JSON (RFC 8785);
``patient`` is the id of the first version of the patient's own record. ``recorded_at`` is the device's time: it is
kept as it came, however wrong that clock is, and decides nothing. ``server_time`` in every answer lets the device tell
its user about a wrong clock.

Push
====
``POST /api/v1/clinics/{clinic}/push`` with ``{"device": ID, "records": [...]}``, at most ``MOST_RECORDS``. The answer
is 200, ``{"server_time", "wipe", "runs": [...], "results": [...]}``, with one result per record, in the order sent::

    {"id", "status", "position", "received_at", "receipt", "code", "text", "field", "retryable"}

- ``accepted``: it is in the ledger, at ``position``; code and the rest are null.
- ``duplicate``: the same record is there already, at ``position``. To the device this is the same as accepted: a lost
  reply is repaired by sending again, as often as it takes. Two records are the same if id, clinic, kind, patient,
  author, device, recorded_at, supersedes (in any order), body digest all agree.
- ``rejected``: it is not in the ledger. ``retryable: true`` means that the same bytes may be accepted later: what it
  refers to has not arrived yet (``reference_unknown``), its device is not registered (``device_unknown``), its
  author's account is gone from a restored server (``author_unknown``), or the server failed on this one record
  (``server_fault``). ``retryable: false`` means that it waits for a person.

A rejected record never holds up another, unless that one refers to it. A batch is one transaction: when the answer
arrives, what it calls accepted is committed. A whole-request error (4xx, 5xx in the common error shape) says that
nothing was stored; 401 means sign in and send again; 413 and ``batch_too_large`` mean send fewer; 5xx and no answer
mean send again later.

A device may have several batches under way, if none of them speaks of what another brings.

``runs`` are stretches of the feed that hold nothing but records of this very answer, each ``{"after": CURSOR, "cursor":
CURSOR, "more"}`` (:mod:`clinic.sync.runs`). A device whose own pull cursor is ``after`` holds everything up to
``cursor`` and need not fetch back what it sent; it stores results and cursor in one transaction, the cursor only if its
own is still ``after``. It may join the runs of several answers, whichever came first. ``more: false`` says that the
feed had nothing behind the run when the answer was made, so that a round that ends there needs no pull. There are none
for theatre's scope, and none fits a cursor of another feed: the pull tells the rest.

Parcels
-------
A digest cannot be compressed, and many of them are a tenth of what a device sends. So a push may bring, in place of
``"records"``, one digest of all its digests::

    {"device": ID, "parcel": {"digest": "64 hex digits", "records": [records without "digest", ...]}}

``digest`` is the SHA-256 of the records' digests, as they are written, one after the other in the order sent. The
server works each out from its body; where all of them together give the parcel's, they are the records that the device
made. The answer repeats that digest as ``"parcel"``, and its results have no ``id``: they stand in the order sent.

A parcel is opened whole or not at all (:mod:`clinic.sync.parcel`): where any of its records cannot be read, or the
digests give another, it is refused as a whole with 400 ``parcel_malformed`` or ``parcel_differs``, and nothing is
stored. The device then sends the same records with their digests, and each is answered for itself. So it does when a
server says 400 ``records_missing``: that one knows no parcels yet.

Codes of a rejection
    the envelope:  ``record_malformed`` and the codec's own codes, ``kind_unknown``, ``id_reused`` (the id belongs to
                   another record), ``clinic_differs``, ``author_differs``, ``device_unknown``, ``role_may_not``,
                   ``receipt_invalid``, ``author_unknown``, ``seal_invalid``, ``device_closed``
    the body:      the codec's own codes, ``digest_mismatch``
    references:    ``reference_unknown``, ``reference_kind``, ``patient_differs``, ``supersedes_itself``,
                   ``supersedes_repeated``
    by kind:       listed in each module of :mod:`clinic.sync.kinds`

Pull
====
``GET /api/v1/clinics/{clinic}/pull?after=CURSOR&limit=N&device=ID`` answers ``{"server_time", "records": [...],
"removed": [ids], "cursor", "more", "reset", "restored"}``: records after the cursor in feed order, and the cursor to
ask with next. Without ``after`` it begins at the beginning. The device stores records, removals and cursor in one
transaction. ``more`` says that the next page has something already.

``reset: true`` says that the cursor means nothing here any more: it belongs to another feed (the server was restored
from a backup), to another scope (the person's role changed), or cannot be read. The answer then carries no records and
an empty cursor; the device pulls from the beginning into a staging place, keeps its outbox, and swaps.
``restored: true`` says besides that the ledger may lack what the device holds (it is not the one that the cursor was
made by); with ``false`` only the scope is another, and what the new pages lack the device may no longer hold.

A record may come again; a device keeps the one that it has. Why none can be missed: :mod:`clinic.ledger.commands`.

Receipts
========
A ``receipt`` comes with every ``accepted`` and ``duplicate`` result and with every pulled record. It is the server's
word that it took this very record, under a key that is not in the database (:mod:`clinic.sync.receipt`). The device
keeps it beside the record, in clear: it says nothing about anybody, and without the record it is good for nothing.

After a restore the server may lack records that other people or devices made. So when the new feed of a ``restored``
reset is complete, the device puts all that it holds and the feed lacks into its outbox, oldest first, and pushes each
with its receipt: ``"receipt"`` beside the other fields of the record. A record with a genuine receipt is admitted as
what the server once accepted itself, whoever sends it and in whatever role: author and device stay as they are, the
digest and that everything it refers to is there are checked, and the rules of its kind are not asked again. (A plan
that was signed and later replaced comes back in any order.) A receipt that this server never gave is
``receipt_invalid`` and not retryable; for the sender's own record it counts as none, and the usual rules decide.

What was offered so may lie outside the device's scope by now: answered ``duplicate`` it stays away from this device's
feed. Once nothing offered waits any more, the device therefore fetches afresh a last time, as at a reset without
``restored``, and keeps what that feed has and what is unsent.

Two precautions make this hold at any moment of a restore: a device without a cursor pulls before it pushes (else no
cursor would tell that what it sent is gone), and a device about to remove what another scope's pages lack shows its old
cursor once more (a pull from the beginning cannot be told of a restore). A revoked device is handed no feed and cannot
know what is lacking: it sends what waits in its outbox, and nothing else.

Carried records
===============
Devices can hand over records to each other in a file, without a server (``static/app/handover/file.js``). What the
clinic has never seen then reaches it by whichever device comes home first: the bearer pushes it unchanged, with
``"seal"`` beside its other fields. The seal is the HMAC-SHA256, in lower-case hexadecimal, of the envelope's canonical
JSON (all fields but the body; ``supersedes`` sorted), under the carrying key of the device that made the record.
``GET /api/v1/carrying`` hands that key to the device itself and to nobody else, so the seal proves author and device
whoever the bearer is. The record is judged as if it came from its author: role, rules of its kind and the days of a
revoked device are the author's (:mod:`clinic.sync.carried`). ``seal_invalid`` is not retryable. For a record of the
sender's own account a seal is not looked at. When the maker's device later sends the same record, that is a
``duplicate`` like any other.

Scope
=====
Surgeons, clinic staff and coordinators pull the whole feed. Theatre staff pull what belongs to cards, of patients with
a plan signed in the last days: :mod:`clinic.sync.scope`.

``removed`` in a pull's answer lists ids that have left the device's scope since its cursor: theatre's days have gone
by. The device removes them in the transaction that stores the records and the cursor; an id that it never had, or that
it has not sent yet, it passes over. A lost answer is repaired by asking again with the same cursor. A record that
comes into scope once more is among the records once more. For those who pull the whole feed ``removed`` is empty.

Devices
=======
``device`` names the device that the session was opened on; any other one is ``device_unknown``. People list
their own with ``GET /api/v1/devices``, and rename and revoke them with ``PATCH`` and ``DELETE
/api/v1/devices/{device}``; administrators can revoke any.

A device that was revoked

1. is handed nothing more: pull, cards and the list of devices answer 403 ``device_revoked``;
2. may sign in and push what it may push anyway, for ``CLINIC_REVOKED_DAYS`` days. Every push's answer carries
   ``wipe: true``: send all that waits, say that it was the last, then wipe;
3. says so with ``"last": true`` in a push, the records of which are taken first. Unless one of them was rejected as
   retryable, the device is closed with this answer, and it wipes when it has the answer;
4. is refused once closed, or once its days are over: 403 ``device_closed`` to every call that names it, signing in
   included. A device wipes at this answer too: it has said its last (and that answer was lost), or is out of time.

``last`` of a device that was not revoked means nothing. An expired session (401) never wipes.

Who leaves has roles that ended and devices that were revoked with them (:mod:`clinic.devices.leaving`). An ended role
still counts on a revoked device that was known while it lasted: there the session names its clinic, without card keys,
and what is written above holds. To any other device, a newer one of that person included, the clinic does not exist.
"""

from typing import Final

MOST_RECORDS: Final = 500
"""Records of one push: a batch holds the clinic's feed while it commits, and a lost reply costs it all again."""

MOST_PULLED: Final = 1000
USUALLY_PULLED: Final = 500
