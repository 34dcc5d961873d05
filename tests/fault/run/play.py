"""One run: a few rounds under fire, then fair weather until nothing moves any more, then the reckoning."""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path

from tests.fault.device.app.app_device import AppDevice
from tests.fault.device.device import Device, TooOld
from tests.fault.device.disk import Disk, Killed
from tests.fault.line.line import Line, Lost
from tests.fault.run.drawing import Drawn, Event
from tests.fault.run.hand import Hand
from tests.fault.run.reckoning import objections
from tests.fault.run.truth import Truth
from tests.fault.run.weather import Weather
from tests.fault.site.site import Site

APP_PERIL = 0.12
MOST_CALM_ROUNDS = 10
DAYS_OF_THEATRE = 14


@dataclass
class Run:
    """What there is in one run. ``tabs`` are devices, some of them on one disk."""

    drawn: Drawn
    site: Site
    line: Line
    truth: Truth
    clinic: str
    chance: random.Random
    hands: list[Hand] = field(default_factory=list)
    tabs: list[Device | AppDevice] = field(default_factory=list)
    weathers: list[Weather] = field(default_factory=list)
    lost: list[Disk] = field(default_factory=list)
    revoked: list[Disk] = field(default_factory=list)

    def present(self) -> list[Device | AppDevice]:
        """Those that were not lost."""
        return [tab for tab in self.tabs if tab.disk not in self.lost]


Maker = Callable[..., Device | AppDevice]


def play(drawn: Drawn, site: Site, *, make: Maker = Device, server_fault: str = "") -> tuple[list[str], Counter[str]]:
    """What there is to object, and what happened."""
    site.want(fault=server_fault)
    run = _prepared(drawn, site, make)
    backup = site.state / f"backup-{run.clinic}"
    try:
        for number in range(drawn.rounds):
            _before(run, number, backup)
            _round(run, number)
            run.line.deliver_held_up()
        _calm(run)
    finally:
        run.line.deliver_held_up()
        site.free_disk()
        backup.unlink(missing_ok=True)
    found = _settled(run)
    if Event.THEATRE in drawn.events and drawn.seed % 2 and not found:
        site.want(days_later=DAYS_OF_THEATRE + 1)
        run.line.note(Event.THEATRE)
        found = _settled(run)
    run.line.happened[Event.POISON] += len(run.truth.codes)
    run.line.happened[Event.APP_KILLED] += sum(tab.disk.deaths for tab in run.tabs)
    return found, run.line.happened


def _prepared(drawn: Drawn, site: Site, make: Maker) -> Run:
    """A clinic of the run's own. Each device has chances of its own, so that it matters little who is faster."""
    people: dict[str, int] = Counter(drawn.roles)
    told = site.clinic([{"role": role, "devices": count} for role, count in people.items()])
    run = Run(drawn, site, Line(site), Truth(), told["clinic"], random.Random(drawn.seed))  # noqa: S311
    for login in told["people"]:
        for phone in login["devices"]:
            _equip(run, make, login, phone)
    for way in drawn.events & {Event.SHUFFLED, Event.TWO_TABS}:
        run.line.note(way)
    return run


def _equip(run: Run, make: Maker, login: dict, phone: dict) -> None:
    drawn, number = run.drawn, len(run.hands)
    chance = random.Random(f"{drawn.seed}/{number}")  # noqa: S311
    disk = Disk(random.Random(f"{drawn.seed}/{number}/disk"))  # noqa: S311
    disk.peril = APP_PERIL if Event.APP_KILLED in drawn.events else 0
    count = 2 if Event.TWO_TABS in drawn.events and number == 0 else 1
    for tab in range(count):
        first = drawn.first if number == tab == 0 else None
        weather = Weather(drawn, random.Random(f"{drawn.seed}/{number}/{tab}"), first=first)  # noqa: S311
        device = make(login=login, device=phone, line=run.line, disk=disk, weather=weather)
        device.in_parcels = (drawn.seed + number) % 2 == 0
        device.most_sent, device.most_pulled = drawn.most_sent, drawn.most_pulled
        device.shuffle = chance.shuffle if Event.SHUFFLED in drawn.events else None
        device.version = 0 if Event.OLD_APP in drawn.events and number == 0 else device.version
        run.tabs.append(device)
        run.weathers.append(weather)
    run.hands.append(Hand(run.tabs[-count], run.truth, chance))


def _before(run: Run, number: int, backup: Path) -> None:
    """What the seed has in store before a round."""
    events, happened = run.drawn.events, run.line.happened
    if Event.RESTORED in events and number == 1:
        run.site.back_up(backup)
    if Event.RESTORED in events and number == run.drawn.rounds - 1:
        run.site.restore(backup)
        happened[Event.RESTORED] += 1
        if Event.PHONE_LOST in events:
            _lose_a_phone(run)
    if Event.REVOKED in events and number == 1:
        device = run.hands[-1].device
        run.site.revoke(device.id)
        run.revoked.append(device.disk)
        happened[Event.REVOKED] += 1
    if Event.DISK_FULL in events and number == 1:
        run.site.fill_disk()
        happened[Event.DISK_FULL] += 1
    if Event.DISK_FULL in events and number == run.drawn.rounds - 1:
        run.site.free_disk()


def _lose_a_phone(run: Run) -> None:
    """With it goes what it alone had; what others fetched from it, or a backup holds, stays."""
    lost = run.tabs[0].disk
    run.lost.append(lost)
    held = {record["id"] for record in run.site.books(run.clinic)["records"]}
    held |= {key for tab in run.present() for key in tab.disk.stored.rows}
    run.truth.lose(set(lost.stored.rows) - held)
    run.line.happened[Event.PHONE_LOST] += 1


def _round(run: Run, number: int) -> None:
    for hand in _shuffled(run, run.hands):
        if hand.device.disk not in run.lost and not hand.device.disk.stored.wiped:
            _write(run, hand, number)
    work = [(tab, weather) for tab, weather in zip(run.tabs, run.weathers, strict=True) if tab.disk not in run.lost]
    if run.drawn.at_once or Event.TWO_TABS in run.drawn.events:
        with ThreadPoolExecutor(len(work)) as pool:
            list(pool.map(lambda one: _try(run, one[0]), work))
    else:
        for tab, _ in _shuffled(run, work):
            _try(run, tab)


def _write(run: Run, hand: Hand, number: int) -> None:
    events = run.drawn.events
    try:
        if Event.THEATRE in events and number == 0 and hand is run.hands[0]:
            hand.write_line()
        if Event.POISON in events and number == 0:
            hand.write_poison()
        for _ in range(4 if Event.DISK_FULL in events and number == 1 else run.chance.randint(1, 3)):
            hand.write(bulky=Event.DISK_FULL in events)
    except Killed:
        return


def _try(run: Run, tab: Device | AppDevice) -> None:
    """Twice at most; a device then has other things to do."""
    for _ in range(run.chance.choice((1, 2))):
        try:
            tab.sync()
        except (Lost, Killed):
            continue
        except TooOld:
            run.line.note(Event.OLD_APP)
        return


def _calm(run: Run) -> None:
    for weather in run.weathers:
        weather.fair = True
    for tab in run.tabs:
        tab.disk.peril = 0
        tab.version = 1
    run.line.deliver_held_up()
    run.site.free_disk()


def _settled(run: Run) -> list[str]:
    """Everybody sends, then everybody fetches, until there is nothing to object to; and then it stays so."""
    found = ["nothing was tried"]
    for _ in range(MOST_CALM_ROUNDS):
        try:
            for tab in run.present():
                tab.push()
            for tab in run.present():
                tab.sync()
        except Lost:
            return ["in fair weather a call had no answer to go by", *objections(run)]
        found = objections(run)
        if not found:
            return _moving(run) if run.drawn.looks_twice else []
    return found


def _moving(run: Run) -> list[str]:
    before = [tab.disk.stored for tab in run.present()]
    for tab in run.present():
        tab.sync()
    return [] if [tab.disk.stored for tab in run.present()] == before else ["when all was done, things still moved"]


def _shuffled(run: Run, things: Sequence) -> list:
    return run.chance.sample(list(things), len(things))
