"""Makes the README's pictures from the demo clinic: ``uv run python -m tests.journeys.pictures``.

Writes ``fixtures/pictures/*.webp``. To add a picture, write how one gets there from the list of patients, and list
it in ``PICTURES``.
"""

from __future__ import annotations

import io
import os
import re
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from PIL import Image
from playwright.sync_api import Browser, Page, expect, sync_playwright

from tests.bench.preparing import prepared
from tests.journeys import steps
from tests.journeys.browser.chromium import MISSING, PLAIN, chromium_path
from tests.journeys.browser.device import LIMIT_MS, PHONE, TABLET, Kind, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.people import SURGEON, THEATRE, Person
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.options import Options
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.signing import Signing
from tests.journeys.site.server import Server, running_server

FOLDER = Path(__file__).parents[2] / "fixtures" / "pictures"
SHARPNESS = 2
"""Pixels of the picture for one of the screen, to each side."""
QUALITY = 80
BANNER_PX = 160
"""What stays above when one scrolls: the way back and the patient."""

MEASURED, TO_MEASURE, PLANNED, SIGNED = "Jorun Askevald", "Wenna Harrowgate", "Brannoc Teaguewell", "Katla Dravecki"


@dataclass(frozen=True, kw_only=True)
class Picture:
    """``get_there`` starts at the list of patients."""

    name: str
    kind: Kind
    scheme: str
    person: Person
    get_there: Callable[[Page], None]


def stay(page: Page) -> None:
    Patients(page).arrive()


def case(page: Page) -> None:
    Patients(page).open(SIGNED)
    Case(page).arrive()


def measure(page: Page) -> None:
    Patients(page).open(TO_MEASURE)
    Case(page).step("Measure")
    pad = Measure(page)
    pad.begin()
    for prism_pd in (35, 40):
        pad.read("eso", prism_pd)
        pad.next()
    pad.read("eso", 30)


def findings(page: Page) -> None:
    Patients(page).open(MEASURED)
    Case(page).step("See findings")
    Findings(page).arrive()
    expect(page.get_by_text(re.compile("Esodeviation")).first).to_be_visible()


def options(page: Page) -> None:
    findings(page)
    Findings(page).to_options()
    Options(page).arrive()
    first = page.get_by_role("article").first
    expect(first).to_be_visible()
    first.evaluate("(option, above) => scrollBy(0, option.getBoundingClientRect().top - above)", BANNER_PX)


def option(page: Page) -> None:
    options(page)
    opened = Options(page).open(steps.BOTH_MEDIAL)
    opened.half_more("RIGHT eye, medial rectus")
    expect(page.get_by_text("surgeon").first).to_be_visible()


def drawing(page: Page) -> None:
    Patients(page).open(PLANNED)
    Case(page).step("Sign the plan")
    signing = Signing(page)
    signing.read_cautions()
    signing.draw("LEFT eye", "medial rectus", "recess")


def card(page: Page) -> None:
    Patients(page).open(SIGNED)
    Case(page).open_card()
    Card(page).arrive()


PICTURES = (
    Picture(name="patients", kind=PHONE, scheme="light", person=SURGEON, get_there=stay),
    Picture(name="measure", kind=PHONE, scheme="light", person=SURGEON, get_there=measure),
    Picture(name="findings", kind=PHONE, scheme="dark", person=SURGEON, get_there=findings),
    Picture(name="options", kind=PHONE, scheme="light", person=SURGEON, get_there=options),
    Picture(name="option", kind=PHONE, scheme="dark", person=SURGEON, get_there=option),
    Picture(name="drawing", kind=PHONE, scheme="light", person=SURGEON, get_there=drawing),
    Picture(name="case-tablet", kind=TABLET, scheme="light", person=SURGEON, get_there=case),
    Picture(name="options-tablet", kind=TABLET, scheme="dark", person=SURGEON, get_there=options),
    Picture(name="card-tablet", kind=TABLET, scheme="dark", person=THEATRE, get_there=card),
    Picture(name="card-phone", kind=PHONE, scheme="dark", person=SURGEON, get_there=card),
)


def main() -> None:
    """Take every picture anew."""
    if chromium_path() is None:
        sys.exit(MISSING)
    FOLDER.mkdir(exist_ok=True)
    expect.set_options(timeout=LIMIT_MS)
    with TemporaryDirectory(prefix="pictures-") as name, sync_playwright() as playwright:
        scratch = Path(name)
        state, build = prepared(scratch)
        browser = playwright.chromium.launch(executable_path=chromium_path(), args=list(PLAIN))
        with running_server(state, build, scratch) as server:
            for picture in PICTURES:
                take(picture, server, browser)
        browser.close()


def take(picture: Picture, server: Server, browser: Browser) -> None:
    device = Passing(server, Watch(), browser=browser, kind=picture.kind, sharpness=SHARPNESS)
    device.page.emulate_media(color_scheme=picture.scheme)
    steps.settle_in(device, picture.person)
    picture.get_there(device.page)
    device.page.evaluate("() => document.activeElement?.blur()")
    shot = device.page.screenshot()
    device.close()
    path = FOLDER / f"{picture.name}.webp"
    Image.open(io.BytesIO(shot)).convert("RGB").save(path, quality=QUALITY, method=6)
    sys.stdout.write(f"{path.name}: {path.stat().st_size / 1000:.0f} kB\n")


if __name__ == "__main__":
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "clinic.settings")
    main()
