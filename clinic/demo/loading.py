"""The scenario into the database: all of it or nothing, and never twice."""

from __future__ import annotations

from itertools import groupby
from operator import itemgetter
from typing import TYPE_CHECKING
from uuid import UUID

from django.db import transaction

from clinic.demo.obstacle import Obstacle
from clinic.devices.register import register
from clinic.people.models import Clinic, Membership, User
from clinic.people.role import Role
from clinic.sync.push import push
from clinic.sync.result import Status
from clinic.sync.sender import Sender

if TYPE_CHECKING:
    from datetime import datetime

    from clinic.demo.scenario import Scenario


def is_loaded(scenario: Scenario) -> bool:
    """Whether the demo clinic is in the database; it is never there in part."""
    return Clinic.objects.filter(pk=scenario.clinic_id).exists()


@transaction.atomic
def load(scenario: Scenario, *, now: datetime) -> None:
    """Make the clinic, its people and devices, and push the records as their devices would.

    An Obstacle if a record is refused; then nothing is loaded.
    """
    clinic = Clinic.objects.create(pk=scenario.clinic_id, name=scenario.clinic_name)
    people = {}
    for account in scenario.accounts:
        user = User.objects.create_user(account.username, password=account.password, full_name=account.full_name)
        Membership.objects.create(user=user, clinic=clinic, role=Role(account.role))
        people[account.username] = user
    for device in scenario.devices:
        register(people[device.username], UUID(device.id), device.name, now=now)
    senders = {account.username: _sender(scenario, account.username) for account in scenario.accounts}
    for author, records in groupby(scenario.records, key=itemgetter("author")):
        for result in push(UUID(scenario.clinic_id), senders[author], list(records), now=now):
            if result.status is not Status.ACCEPTED:
                refusal = f"{result.code}, {result.text} {result.field or ''}"
                raise Obstacle(f"The demo record {result.id} was refused: {refusal}")


def _sender(scenario: Scenario, username: str) -> Sender:
    account = next(account for account in scenario.accounts if account.username == username)
    devices = frozenset(UUID(device.id) for device in scenario.devices if device.username == username)
    return Sender(username=username, full_name=account.full_name, role=Role(account.role), devices=devices)
