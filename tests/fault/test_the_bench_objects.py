"""A bench that finds nothing wrong is worth something only if it finds what is wrong: here it is, on purpose."""

from dataclasses import replace as changed

import pytest

from tests.clinic.pen import uuid7
from tests.fault.device.app.mixed import Mixed
from tests.fault.device.batch import next_batch
from tests.fault.device.device import Device
from tests.fault.device.stored import Stored, staged, taken_in, wiped
from tests.fault.line.mishap import Kind
from tests.fault.run.drawing import Event, draw
from tests.fault.run.play import play
from tests.fault.site.broken import FAULTS

TRIES = 6
"""In one run the fault may happen not to matter."""


class CursorFirst(Device):
    """Stores a page's cursor, and in a second step its records."""

    def take(self, page, *, asked):
        self.disk.change(at, page["cursor"])
        self.disk.change(lambda stored: step(stored)(at(stored, asked), page, asked=asked))


def at(stored, cursor):
    staging = stored.staging
    return changed(stored, staging=changed(staging, cursor=cursor)) if staging else changed(stored, cursor=cursor)


def step(stored):
    return staged if stored.staging else taken_in


class Forgetful(Device):
    """Takes records for sent when it has sent them, whatever comes back."""

    def push(self):
        while batch := next_batch(self.disk.stored, asked=(), most=self.most_sent):
            sent = {record["id"] for record in batch}
            self.disk.change(
                lambda stored, sent=sent: changed(
                    stored, outbox=tuple(entry for entry in stored.outbox if entry.id not in sent)
                )
            )
            self._call("POST", "push", {"device": self.id, "records": batch})


class Renaming(Device):
    """Makes a new id for every try, and so a new record of every repetition."""

    def push(self):
        asked = set()
        while batch := next_batch(self.disk.stored, asked=asked, most=self.most_sent):
            asked |= {record["id"] for record in batch}
            renamed = {record["id"]: uuid7() for record in batch}
            sent = [
                record
                | {"id": renamed[record["id"]], "patient": renamed.get(record["patient"], record["patient"])}
                | {"supersedes": [renamed.get(key, key) for key in record["supersedes"]]}
                for record in batch
            ]
            answer = self._call("POST", "push", {"device": self.id, "records": sent})
            names = {new: old for old, new in renamed.items()}
            self.settle([result | {"id": names[result["id"]]} for result in answer.body["results"]])


class Deserter(Device):
    """Asks for news first, and wipes as soon as it hears that it was revoked, whatever it has not sent."""

    def _exchange(self):
        self.pull()
        super()._exchange()

    def _take_leave(self):
        self.disk.change(wiped)


class Hasty(Device):
    """Puts a new feed in the place of the old before it is complete, and drops what the restored server lacks."""

    def _finish(self, *, reached):
        self.disk.change(lambda stored: Stored(rows=stored.staging.rows, cursor=reached) if stored.staging else stored)


def under(*events, kinds=(Kind.REPLY_LOST, Kind.REQUEST_LOST, Kind.KILLED_SOON)):
    """Runs in which this happens, and nothing else."""
    for seed in range(TRIES):
        yield changed(
            draw(seed),
            first=None,
            kinds=kinds,
            rate=0.4,
            events=frozenset(events),
            at_once=False,
            roles=("clinic", "surgeon"),
            most_sent=200,
            most_pulled=1,
        )


@pytest.mark.parametrize(
    ("kind_of_device", "events"),
    [
        (CursorFirst, (Event.APP_KILLED,)),
        (Forgetful, ()),
        (Renaming, ()),
        (Deserter, (Event.REVOKED,)),
        (Hasty, (Event.RESTORED,)),
    ],
    ids=lambda value: getattr(value, "__name__", ""),
)
def test_a_broken_device_is_objected_to(sites, kind_of_device, events):
    assert any(play(drawn, sites[0], make=kind_of_device)[0] for drawn in under(*events))


@pytest.mark.parametrize(
    ("fault", "events", "rate"),
    [
        ("takes_silence_for_yes", (), 0.4),
        ("steps_before_it_stores", (Event.APP_KILLED,), 0.0),
        ("takes_a_backup_for_the_whole", (Event.RESTORED,), 0.4),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_broken_app_is_objected_to(sites, phones, fault, events, rate):
    drawn = (changed(drawn, most_pulled=500, rate=rate) for drawn in under(*events))
    assert any(play(each, sites[0], make=Mixed(phones, each.seed, fault=fault))[0] for each in drawn)


@pytest.mark.parametrize("fault", sorted(FAULTS))
def test_a_broken_server_is_objected_to(sites, fault):
    assert any(play(drawn, sites[0], server_fault=fault)[0] for drawn in under())


def test_a_sound_device_and_a_sound_server_are_not_objected_to(sites):
    assert [objections for drawn in under(Event.APP_KILLED) if (objections := play(drawn, sites[0])[0])] == []
