"""Servers that break a promise on purpose, so that the bench can be seen to object."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from typing import Any

from django.db import transaction

import clinic.api.pull.views
import clinic.api.push.views
import clinic.sync.push
from clinic.sync.cursor import Cursor
from clinic.sync.pull import WHOLE_FEED
from clinic.sync.runs import Run
from tests.clinic.pen import uuid7


def forgets_what_it_took() -> None:
    """A repeated record enters once more, under another id."""
    from clinic.ledger.models import Record  # noqa: PLC0415 - the site is set up when a server is

    push = clinic.api.push.views.push

    def forgetful(clinic_id: Any, sender: Any, records: Any, **named: Any) -> Any:
        known = {str(key) for key in Record.objects.filter(clinic=clinic_id).values_list("pk", flat=True)}
        sent = [_renamed(record) if record.get("id") in known else record for record in records]
        results = push(clinic_id, sender, sent, **named)
        for record, result in zip(records, results, strict=True):
            object.__setattr__(result, "id", record.get("id"))
        return results

    clinic.api.push.views.push = forgetful


def answers_before_it_commits() -> None:
    """Now and then what it calls accepted is rolled back."""
    settle = clinic.sync.push._settle_together  # noqa: SLF001

    def hasty(*args: Any) -> Any:
        with transaction.atomic():
            results = settle(*args)
            transaction.set_rollback(random.random() < 0.5)  # noqa: S311
        return results

    clinic.sync.push._settle_together = hasty  # noqa: SLF001


def steps_over_records() -> None:
    """A cursor that now and then stands behind a record which it has not handed out, as one does without a lock."""
    pull = clinic.api.pull.views.pull

    def hasty(*args: Any, **named: Any) -> Any:
        page = pull(*args, **named)
        return replace(page, records=page.records[: -1 if random.random() < 0.5 else None])  # noqa: S311

    clinic.api.pull.views.pull = hasty


def brings_devices_past_others() -> None:
    """Runs of a push from wherever a device stands to the end of the feed, whosever records lie between."""
    runs = clinic.api.push.views.runs

    def hasty(*args: Any) -> Any:
        from clinic.ledger.models import FeedCounter  # noqa: PLC0415 - as above

        counter = FeedCounter.objects.get(clinic_id=args[0])
        end = Cursor(feed=counter.feed, scope=WHOLE_FEED, position=counter.position)
        starts = (str(replace(end, position=position)) for position in range(end.position))
        return [Run(after=start, cursor=str(end), more=False) for start in starts if runs(*args)]

    clinic.api.push.views.runs = hasty


def _renamed(record: dict[str, Any]) -> dict[str, Any]:
    new = uuid7()
    return record | {"id": new, "patient": new if record["patient"] == record["id"] else record["patient"]}


FAULTS: dict[str, Callable[[], None]] = {
    function.__name__: function
    for function in (
        forgets_what_it_took,
        answers_before_it_commits,
        steps_over_records,
        brings_devices_past_others,
    )
}
