"""How often somebody may try to sign in.

Counted in the database, so that a restart forgets nothing and several processes count together.

A try is counted before the password is looked at, under a lock of its row, so that guesses sent side by side count one
by one; a right one is then taken off again. After ``FREE_TRIES`` the door is shut for a minute, and after each further
try for twice as long, up to an hour. A name that no account has is counted like any other, so the answer tells nothing.

Tries from a device that the account has signed in from before are counted apart from all others: a stranger who guesses
at a surgeon's name does not lock the surgeon's own phone out.
"""

from __future__ import annotations

import hashlib
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID

from django.db import transaction
from django.db.models import F

from clinic.people.models import SignInTries

FREE_TRIES: Final = 5
FIRST_WAIT: Final = timedelta(minutes=1)
LONGEST_WAIT: Final = timedelta(hours=1)
FORGOTTEN_AFTER: Final = timedelta(days=1)
"""Tries this long ago count no more."""


def name_of(username: str, known_device: UUID | None = None) -> str:
    """What tries are counted under; a digest, for people type passwords where names belong."""
    plain = f"{username.casefold()}\n{known_device or ''}"
    return hashlib.sha256(plain.encode("utf-8", "replace")).hexdigest()


@transaction.atomic
def begin(name: str, *, now: datetime) -> timedelta:
    """Count a try; how long it must wait, zero if it may go on."""
    SignInTries.objects.get_or_create(name=name, defaults={"count": 0, "last_at": now, "shut_until": now})
    tries = SignInTries.objects.select_for_update().get(name=name)
    if tries.shut_until > now:
        return tries.shut_until - now
    tries.count = 1 if now - tries.last_at > FORGOTTEN_AFTER else tries.count + 1
    tries.last_at = now
    tries.shut_until = now + wait_after(tries.count)
    tries.save(update_fields=["count", "last_at", "shut_until"])
    return timedelta()


def wait_after(count: int) -> timedelta:
    """How long the door is shut after so many tries in a row."""
    if count < FREE_TRIES:
        return timedelta()
    doublings = min(count - FREE_TRIES, 10)  # more of them are beyond the longest wait anyway
    wait: timedelta = FIRST_WAIT * 2**doublings
    return min(LONGEST_WAIT, wait)


def succeeded(name: str) -> None:
    """The try was right: nothing is held against the next."""
    SignInTries.objects.filter(name=name).update(count=0, shut_until=F("last_at"))


def forget(*, now: datetime) -> int:
    """Drop the tries that count no more; how many rows there were."""
    found, _ = SignInTries.objects.filter(last_at__lt=now - FORGOTTEN_AFTER, shut_until__lt=now).delete()
    return found
