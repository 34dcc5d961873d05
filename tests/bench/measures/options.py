"""From a changed figure to the options drawn again, in the page that the surgeon looks at."""

from __future__ import annotations

import re
from collections.abc import Iterator

from playwright.sync_api import Page, expect

from tests.bench.bench import SPEEDS, Bench
from tests.bench.figure import Figure, times
from tests.bench.page import press_ms
from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.options import Option, Options

TITLE = "Options drawn again"
AIM_MS = {4: 150.0}
MORE, LESS = "0.5 mm more", "0.5 mm less"


def measure(bench: Bench) -> Iterator[Figure]:
    device = Passing(bench.server, Watch(), browser=bench.browser, kind=PHONE)
    steps.settle_in(device, SURGEON)
    steps.enter_patient(device.page, somebody())
    steps.measure_esotropia(device.page).to_options()
    yield from _pair("another table chosen", [_tables(bench, device.page, speed) for speed in SPEEDS])
    option = Options(device.page).open(steps.BOTH_MEDIAL)
    yield from _pair("half a millimetre more or less", [_doses(bench, option, speed) for speed in SPEEDS])
    device.close()


def _pair(what: str, values: list[list[float]]) -> Iterator[Figure]:
    plain, slow = (
        Figure(what=f"{what}, {speed}x", unit="ms", values=found, aim=AIM_MS.get(speed))
        for speed, found in zip(SPEEDS, values, strict=True)
    )
    yield plain
    yield times("1x", slow, plain)


def _doses(bench: Bench, option: Option, speed: int) -> list[float]:
    """The first muscle's figure up and down again, until its distance from the limbus follows."""
    values = []
    with bench.at(speed):
        for _ in range(bench.many):
            values.append(press_ms(option.page, MORE, until=r"11\.5 mm from the limbus"))
            press_ms(option.page, LESS, until=r"^(?!.*11\.5 mm from the limbus)(?!.*calculating)")
    return values


def _tables(bench: Bench, page: Page, speed: int) -> list[float]:
    values = []
    with bench.at(speed):
        for _ in range(bench.many):
            values.append(press_ms(page, "Classic Parks", until=r"Table Classic Parks"))
            press_ms(page, "Wright, after Parks", until=r"Table Wright, after Parks")
    expect(page.get_by_text(re.compile("Classic Parks")).first).to_be_visible()
    return values
