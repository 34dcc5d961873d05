"""From opening the app to the list of patients and to an engine that calculates."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.page import MARKS, mark_ms
from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.people import PIN, SURGEON

TITLE = "Starts (from opening the page; loopback, no network delay)"
LIST_AIM_MS = {4: 1_000.0}
ENGINE_AIM_MS = {4: 2_500.0}


@dataclass
class Times:
    """Milliseconds of each run."""

    sign_in: list[float] = field(default_factory=list)
    first_engine: list[float] = field(default_factory=list)
    unlock: list[float] = field(default_factory=list)
    listed: list[float] = field(default_factory=list)
    engine: list[float] = field(default_factory=list)


def measure(bench: Bench) -> Iterator[Figure]:
    plain, slow = (_times(bench, speed) for speed in SPEEDS)
    for what, name, aims in (
        ("first visit: page to sign-in", "sign_in", {}),
        ("first visit: page to engine ready", "first_engine", {}),
        ("repeat start: page to PIN entry", "unlock", {}),
        ("repeat start: page to PIN entry, and PIN to list of patients", "listed", LIST_AIM_MS),
        ("repeat start: page to engine ready", "engine", ENGINE_AIM_MS),
    ):
        one, four = (
            Figure(what=f"{what}, {speed}x", unit="ms", values=getattr(of, name), aim=aims.get(speed))
            for speed, of in zip(SPEEDS, (plain, slow), strict=True)
        )
        yield one
        yield times("1x", four, one)


def _times(bench: Bench, speed: int) -> Times:
    found = Times()
    for _ in range(bench.runs):
        _first_visit(bench, speed, found)
    device = _device(bench)
    steps.settle_in(device, SURGEON)
    steps.ready_for_a_day_without_network(device)
    for _ in range(bench.runs):
        _repeat_start(bench, device, speed, found)
    device.close()
    return found


def _device(bench: Bench) -> Passing:
    device = Passing(bench.server, Watch(), browser=bench.browser, kind=PHONE)
    device.context.add_init_script(MARKS)
    return device


def _first_visit(bench: Bench, speed: int, found: Times) -> None:
    device = _device(bench)
    with bench.at(speed):
        page = device.go()
        found.sign_in.append(mark_ms(page, "Sign in"))
        found.first_engine.append(mark_ms(page, "engine ready"))
    device.close()


def _repeat_start(bench: Bench, device: Passing, speed: int, found: Times) -> None:
    device.page.close()
    page = device.page = device.context.new_page()
    with bench.at(speed):
        device.go()
        unlock = mark_ms(page, "Unlock")
        found.engine.append(mark_ms(page, "engine ready"))
        page.get_by_label("PIN", exact=True).fill(PIN)
        pressed = page.evaluate("() => { document.querySelector('footer button').click(); return performance.now(); }")
        found.unlock.append(unlock)
        found.listed.append(unlock + mark_ms(page, "list") - pressed)
