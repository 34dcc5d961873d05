"""The server's own work on records, piece by piece: ``python -m tests.bench.inserting RECORDS``, as JSON.

The same number of records into the same database in the same batches: as bare rows, one statement and one transaction a
batch; through the ledger's one way to write; and through the whole push, which reads, judges and digests each.
"""

from __future__ import annotations

import json
import os
import sys
import time
import uuid
from collections.abc import Callable
from itertools import islice
from typing import Any

BATCH = 200


def main(count: int) -> None:
    """Milliseconds of each."""
    import django  # noqa: PLC0415 - settings are read from the environment that this process was given

    django.setup()
    from django.core.management import call_command  # noqa: PLC0415
    from django.db import transaction  # noqa: PLC0415
    from django.utils import timezone  # noqa: PLC0415

    from clinic.demo.loading import load  # noqa: PLC0415
    from clinic.demo.scenario import read_scenario, scenario_path  # noqa: PLC0415
    from clinic.ledger import commands  # noqa: PLC0415
    from clinic.ledger.commands import Entry  # noqa: PLC0415
    from clinic.ledger.models import FeedCounter  # noqa: PLC0415
    from clinic.people.models import User  # noqa: PLC0415
    from clinic.people.role import Role  # noqa: PLC0415
    from clinic.sync.push import push  # noqa: PLC0415
    from clinic.sync.sender import Sender  # noqa: PLC0415
    from tests.bench.seeding import BODY, DIGEST, insert, rows  # noqa: PLC0415
    from tests.clinic.pen import RECORDED_AT, Pen, uuid7  # noqa: PLC0415

    call_command("migrate", verbosity=0)
    now = timezone.now()
    load(read_scenario(scenario_path()), now=now)
    counter = FeedCounter.objects.get()
    clinic, place = counter.clinic_id, counter.position
    surgeon = User.objects.get(username="surgeon")
    device = surgeon.devices.values_list("device_id", flat=True).first()

    def bare() -> None:
        wanted = rows(clinic, place, count, now)
        while batch := list(islice(wanted, BATCH)):
            insert(iter(batch))
        FeedCounter.objects.update(position=place + count)

    entries = [
        Entry(
            id=uuid.UUID(uuid7()), kind="examination", patient=uuid.uuid4(), author="surgeon", device=device,
            recorded_at=RECORDED_AT, supersedes=(), body=BODY, digest=DIGEST,
        )
        for _ in range(count)
    ]  # fmt: skip

    def ledger() -> None:
        for start in range(0, count, BATCH):
            with transaction.atomic():
                commands.append(commands.lock_feed(clinic), entries[start : start + BATCH], received_at=now)

    pen = Pen(str(clinic), surgeon.username, surgeon.full_name, str(device))
    records = [pen.patient(hospital_number=f"B-{number}", note="n" * 1300) for number in range(count)]
    sender = Sender(
        username=surgeon.username, full_name=surgeon.full_name, role=Role.SURGEON, devices=frozenset({device})
    )

    def whole() -> None:
        for start in range(0, count, BATCH):
            results = push(clinic, sender, records[start : start + BATCH], now=now)
            assert {result.status.value for result in results} == {"accepted"}

    sys.stdout.write(json.dumps({work.__name__: _ms(work) for work in (bare, ledger, whole)}))


def _ms(work: Callable[[], Any]) -> float:
    started = time.perf_counter()
    work()
    return (time.perf_counter() - started) * 1000


if __name__ == "__main__":
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "clinic.settings")
    main(int(sys.argv[1]))
