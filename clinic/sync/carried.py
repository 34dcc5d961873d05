"""Records that one device brings for another: a team handed them over in a file, and only one phone came home.

Whoever brings it, a record is judged as its maker's: it must bear the seal of the device that made it, under a key that
only that device and the server have (:mod:`clinic.devices.keys`), and it may be what its author's own role may write.
The device must be known to the server as that author's, and may have been revoked only as long as it could still send
by itself. Codes: ``seal_invalid``, ``device_unknown``, ``device_closed``, ``author_unknown``.
"""

from __future__ import annotations

from datetime import datetime
from uuid import UUID

from clinic.devices.keys import sealed_by
from clinic.devices.leaving import counts
from clinic.devices.models import Device
from clinic.devices.register import is_closed
from clinic.people.models import Membership
from clinic.people.role import Role
from clinic.sync.envelope import Pushed
from clinic.sync.result import Rejected
from clinic.sync.sender import Sender


def maker(clinic: UUID, pushed: Pushed, *, now: datetime) -> Sender:
    """The one who made the record, as if it came from that person's own device."""
    envelope = pushed.envelope
    device_id = UUID(envelope.device)
    author = envelope.author
    device = Device.objects.select_related("user").filter(user__username=author, device_id=device_id).first()
    if device is None:
        text = "The record was made on a device that its author never signed in from."
        raise Rejected("device_unknown", text, field="device", retryable=True)
    if not sealed_by(device, pushed.sealed_text(), pushed.seal or ""):
        raise Rejected("seal_invalid", "The seal is not that of the device that made the record.", field="seal")
    if is_closed(device, now=now):
        text = "The device that made the record was revoked, and nothing more is taken from it."
        raise Rejected("device_closed", text, field="device")
    role = Membership.objects.filter(clinic=clinic, user=device.user, user__is_active=True).first()
    if role is None or not counts(role, device):
        text = "The account that made this record has no part in this clinic now. An administrator can give it one."
        raise Rejected("author_unknown", text, field="author", retryable=True)
    return Sender(
        username=author,
        full_name=device.user.full_name,
        role=Role(role.role),
        devices=frozenset({device_id}),
    )
