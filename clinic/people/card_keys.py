"""The keys that a clinic's card codes are sealed with (:mod:`planner.card.code`).

Random, made here, one for each clinic when it is first asked for. Members have it on their devices, sealed at rest, for
a card is printed and read without a network; it proves that a member printed the code, not which one. After a member
or a device has gone, ``manage.py new_card_key`` makes another: new paper is sealed with it as soon as a device has
heard from the clinic, and older paper is still read with the older ones.
"""

from __future__ import annotations

import secrets
from uuid import UUID

from django.db import transaction
from django.utils import timezone

from clinic.people.models import CardKey, Clinic

BYTES = 32
MOST = 20
"""So many are handed out: the desk takes no more, and paper sealed with a still older one is old paper."""


def card_keys(clinic: UUID) -> list[str]:
    """The clinic's keys in hexadecimal, the one to seal with first."""
    found = _known(clinic)
    if found:
        return found
    with transaction.atomic():
        # Locked, so that two devices that ask at once are told the same one.
        Clinic.objects.select_for_update().get(pk=clinic)
        return _known(clinic) or [make(clinic)]


def make(clinic: UUID) -> str:
    """A new key, with which the clinic seals from now on."""
    return CardKey.objects.create(
        clinic_id=clinic, secret=secrets.token_bytes(BYTES).hex(), made_at=timezone.now()
    ).secret


def _known(clinic: UUID) -> list[str]:
    return list(CardKey.objects.filter(clinic=clinic).values_list("secret", flat=True)[:MOST])
