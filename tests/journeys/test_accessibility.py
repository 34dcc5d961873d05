"""Every screen can be read and used: by axe-core's rules, light and dark, on phone and tablet, and at 320 px width."""

import re
from dataclasses import dataclass, field

import pytest
from playwright.sync_api import Page

from clinic.build.folders import folders
from tests.journeys.browser.accessibility import low_steps, pale, resize, too_wide_px, violations
from tests.journeys.browser.device import PHONE, TABLET, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.site.server import running_server
from tests.journeys.walk import walk

NARROW = {"width": 320, "height": 640}


@dataclass
class Seen:
    """What was found on the way; ``places`` are the routes that were visited."""

    violations: list[str] = field(default_factory=list)
    too_wide: list[str] = field(default_factory=list)
    low: list[str] = field(default_factory=list)
    places: set[str] = field(default_factory=set)
    screens: int = 0

    def visit(self, name: str, page: Page) -> None:
        """Comes to a phone, and leaves one."""
        self.screens += 1
        theatre = name.startswith(("card", "checks"))
        self.places.add(page.url.partition("#")[2])
        page.emulate_media(color_scheme="light")
        self.note(name, "phone, light", violations(page, theatre=theatre))
        page.emulate_media(color_scheme="dark")
        self.note(name, "phone, dark", pale(page, theatre=theatre))
        resize(page, {"width": TABLET.width, "height": TABLET.height})
        self.note(name, "tablet, dark", violations(page, theatre=theatre))
        resize(page, NARROW)
        self.low += [f"{name}: {step}" for step in low_steps(page, least_px=64 if theatre else 48)]
        if over := too_wide_px(page):
            self.too_wide.append(f"{name}: {over} px")
        resize(page, {"width": PHONE.width, "height": PHONE.height})

    def note(self, name: str, held: str, found: list[str]) -> None:
        self.violations += [f"{name}, {held}: {line}" for line in found]


@pytest.fixture(scope="module")
def seen(loaded_state, app_build, browser, tmp_path_factory) -> Seen:
    """All screens, walked through once."""
    found = Seen()
    with running_server(loaded_state, app_build, tmp_path_factory.mktemp("walk")) as server:
        device = Passing(server, Watch(), browser=browser, kind=PHONE)
        try:
            walk(device, found.visit)
        finally:
            device.close()
    assert device.watch.troubles == []
    return found


def test_axe_finds_no_violation_on_any_screen_light_or_dark_on_phone_or_tablet(seen):
    assert not seen.violations, _lines(seen.violations)


def test_no_screen_scrolls_sideways_at_320_px(seen):
    assert not seen.too_wide, _lines(seen.too_wide)


def test_every_step_at_the_foot_is_high_enough_for_a_thumb_and_in_theatre_for_a_glove(seen):
    assert not seen.low, _lines(seen.low)


def test_every_route_of_the_app_was_walked(seen):
    index = (folders().project / "static/app/screens/index.js").read_text(encoding="utf-8")
    routes = re.findall(r"path: '([^']+)'", index)
    assert routes

    unseen = [route for route in routes if not any(_fits(route, place) for place in seen.places)]

    assert unseen == []


def _lines(found: list[str]) -> str:
    return "\n\n".join(["", *found])


def _fits(route: str, place: str) -> bool:
    return re.fullmatch(re.sub(r":\w+", "[^/]+", route), place) is not None
