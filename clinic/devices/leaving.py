"""People who leave: a role ends at once for whoever reads, and stays for the last words of the phones that they had.

Their devices are revoked with it. A revoked device is handed nothing, sends what waits, and wipes
(:mod:`clinic.sync.protocol`). Were it told that there is no such clinic, or to sign in, it would go on holding what it
has. So an ended role still counts on a revoked device that was known while it lasted, and nowhere else.
"""

from __future__ import annotations

from datetime import datetime

from django.db import transaction

from clinic.devices import register
from clinic.devices.models import Device
from clinic.people.models import Membership, User


def counts(role: Membership, device: Device | None) -> bool:
    """Whether the role is good for anything on that device of the person's."""
    if role.ended_at is None:
        return True
    return device is not None and device.revoked_at is not None and device.registered_at <= role.ended_at


@transaction.atomic
def take_away(role: Membership, *, now: datetime) -> None:
    """The role ends, and every device of the person is revoked: one of them may hold that clinic."""
    Membership.objects.filter(pk=role.pk, ended_at=None).update(ended_at=now)
    for device in register.of(role.user):
        register.revoke(device, now=now)


@transaction.atomic
def let_go(user: User, *, now: datetime) -> None:
    """Every role and right of the person ends, and every device is revoked; the account can still say farewell."""
    Membership.objects.filter(user=user, ended_at=None).update(ended_at=now)
    User.objects.filter(pk=user.pk).update(is_staff=False, is_superuser=False)
    for device in register.of(user):
        register.revoke(device, now=now)


def not_heard_out(user: User, *, now: datetime) -> list[Device]:
    """Devices that may still hold something and have not said their last."""
    return [device for device in register.of(user) if not register.is_closed(device, now=now)]
