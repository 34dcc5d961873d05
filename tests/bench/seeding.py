"""A ledger of any length, written past the site's own code: ``python -m tests.bench.seeding RECORDS``.

Four records a patient (patient, examination, plan, signature) of about 1.5 kB each, ``A_DAY`` of them a day up to now,
so that what theatre sees of a long ledger is as much as of a short one. Bodies are padded text, not valid ones: nothing
that is measured here reads them. Prints, as JSON, the cursors that stand at the end, and how long the insertion took.
"""

from __future__ import annotations

import json
import os
import sys
import time
import uuid
from collections.abc import Iterator
from datetime import timedelta
from typing import Any

A_DAY = 200
KINDS = ("patient", "examination", "plan", "signature")
BODY = json.dumps({"schema": 1, "note": "n" * 1450})
DIGEST = "0" * 64
AT_ONCE = 5_000
COLUMNS = (
    "id", "clinic_id", "position", "kind", "patient", "author", "device", "recorded_at", "body", "digest", "about_id",
    "received_at",
)  # fmt: skip


def main(records: int) -> None:
    """Tables, the demo clinic's people, and the records."""
    import django  # noqa: PLC0415 - settings are read from the environment that this process was given

    django.setup()
    from django.core.management import call_command  # noqa: PLC0415
    from django.utils import timezone  # noqa: PLC0415

    from clinic.demo.loading import load  # noqa: PLC0415
    from clinic.demo.scenario import read_scenario, scenario_path  # noqa: PLC0415
    from clinic.ledger.models import FeedCounter  # noqa: PLC0415

    call_command("migrate", verbosity=0)
    now = timezone.now()
    load(read_scenario(scenario_path()), now=now)
    counter = FeedCounter.objects.get()
    started = time.perf_counter()
    insert(rows(counter.clinic_id, counter.position, records, now))
    took_s = time.perf_counter() - started
    _let_planner_count()
    counter.position += records
    counter.save()
    sys.stdout.write(json.dumps({"took_s": took_s, **_cursors(counter, now)}))


def _let_planner_count() -> None:
    """PostgreSQL plans by what it has counted, and would count by itself a minute later only."""
    from django.db import connection  # noqa: PLC0415 - as above

    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("ANALYZE")


def _cursors(counter: Any, now: Any) -> dict[str, str]:
    from clinic.sync import scope  # noqa: PLC0415 - as above
    from clinic.sync.cursor import Cursor  # noqa: PLC0415
    from clinic.sync.pull import WHOLE_FEED  # noqa: PLC0415

    whole = Cursor(feed=counter.feed, scope=WHOLE_FEED, position=counter.position)
    theatre = Cursor(feed=counter.feed, scope=scope.name(), position=counter.position, moment=int(now.timestamp()))
    return {"whole": str(whole), "theatre": str(theatre)}


def rows(clinic: uuid.UUID, position: int, records: int, now: Any) -> Iterator[tuple[Any, ...]]:
    """The records in feed order, the last one received now."""
    device = uuid.uuid4()
    patient = plan = uuid.uuid4()
    for place in range(records):
        kind = KINDS[place % len(KINDS)]
        record = uuid.UUID(int=(7 << 76) | (2 << 62) | (place + 1) << 80 | place)
        patient = record if kind == "patient" else patient
        plan = record if kind == "plan" else plan
        received = now - timedelta(days=(records - place) / A_DAY)
        yield (
            record, clinic, position + place + 1, kind, patient, "surgeon", device, "2026-11-25T09:30:00+01:00", BODY,
            DIGEST, plan if kind == "signature" else None, received,
        )  # fmt: skip


def insert(wanted: Iterator[tuple[Any, ...]]) -> None:
    """As fast as the database takes them."""
    from django.db import connection, transaction  # noqa: PLC0415 - as above

    if connection.vendor == "postgresql":
        connection.ensure_connection()
        copy = f"COPY ledger_record ({', '.join(COLUMNS)}) FROM STDIN"
        with connection.connection.cursor() as cursor, cursor.copy(copy) as door:
            for row in wanted:
                door.write_row(row)
        return
    marks = ", ".join("?" * len(COLUMNS))
    statement = f"INSERT INTO ledger_record ({', '.join(COLUMNS)}) VALUES ({marks})"  # noqa: S608 - names of our own
    with transaction.atomic():
        connection.connection.executemany(statement, (tuple(map(_plain, row)) for row in wanted))


def _plain(value: Any) -> Any:
    if isinstance(value, uuid.UUID):
        return value.hex
    return value.strftime("%Y-%m-%d %H:%M:%S.%f") if hasattr(value, "strftime") else value


if __name__ == "__main__":
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "clinic.settings")
    main(int(sys.argv[1]))
