"""A phone or tablet in somebody's hands: a browser with a memory of its own, watched for trouble."""

from __future__ import annotations

import contextlib
import os
import signal
from dataclasses import dataclass
from http import HTTPStatus
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, BrowserContext, BrowserType, Error, Page

from tests.journeys.browser.chromium import ARGUMENTS, chromium_path
from tests.journeys.browser.watch import NO_NETWORK, Watch
from tests.journeys.people import CLINIC_ID
from tests.journeys.site.server import Server

LIMIT_MS = 60_000
"""Far above what any step takes: a loaded machine makes a journey slow and not red."""


@dataclass(frozen=True, kw_only=True)
class Kind:
    """What is held in the hands."""

    width: int
    height: int

    @property
    def options(self) -> dict[str, Any]:
        return {
            "viewport": {"width": self.width, "height": self.height},
            "is_mobile": True,
            "has_touch": True,
            "locale": "en-GB",
            "timezone_id": "Europe/London",
            "accept_downloads": True,
        }


PHONE = Kind(width=390, height=844)
TABLET = Kind(width=1024, height=768)


class Device:
    """One device in front of one server; ``page`` is the tab in view."""

    def __init__(self, server: Server, watch: Watch) -> None:
        self.server = server
        self.watch = watch
        self.context: BrowserContext
        self.page: Page

    def go(self, path: str = "") -> Page:
        """Opens the app, at a route if one is given (``/patients``)."""
        self.page.goto(f"{self.server.address}/{f'#{path}' if path else ''}")
        return self.page

    def be(self, kind: Kind) -> None:
        """As large as that, from now on: nothing else tells a tablet from a phone here."""
        self.page.set_viewport_size({"width": kind.width, "height": kind.height})

    def new_tab(self) -> Page:
        page = self.context.new_page()
        page.goto(self.server.address)
        return page

    def cut_network(self) -> None:
        """As far as the device can tell; stop the server too for a cut that a service worker cannot miss."""
        self.watch.expect(NO_NETWORK)
        self.context.set_offline(True)

    def reconnect(self) -> None:
        self.context.set_offline(False)

    def look_for_update(self) -> None:
        """The app looks when the network comes back; it would otherwise by the hour."""
        self.cut_network()
        self.page.evaluate("() => navigator.onLine && new Promise((on) => addEventListener('offline', on))")
        self.reconnect()

    @property
    def login(self) -> str:
        """What the server knows this device's session by."""
        return next(cookie["value"] for cookie in self.context.cookies() if cookie["name"] == "sessionid")

    def served_card(self, signature: str) -> bytes:
        """The server's own drawing of a card, fetched with this device's login."""
        response = self.context.request.get(f"{self.server.address}/api/v1/clinics/{CLINIC_ID}/cards/{signature}.pdf")
        assert response.status == HTTPStatus.OK, response.text()
        return response.body()

    def close(self) -> None:
        self.context.close()

    def _use(self, context: BrowserContext) -> None:
        self.context = context
        self.watch.attach(context)
        context.set_default_timeout(LIMIT_MS)
        self.page = context.pages[0] if context.pages else context.new_page()


class Passing(Device):
    """Forgets everything when it is closed; shares a browser, so that it is there at once."""

    def __init__(self, server: Server, watch: Watch, *, browser: Browser, kind: Kind, sharpness: int = 1) -> None:
        super().__init__(server, watch)
        self._use(browser.new_context(**kind.options, device_scale_factor=sharpness))


class Lasting(Device):
    """Keeps its storage in ``memory``: it can be switched off, or die, and be switched on again."""

    ARGUMENTS: tuple[str, ...] = ()
    """Beside those that every browser is started with."""

    def __init__(self, server: Server, watch: Watch, *, chromium: BrowserType, kind: Kind, memory: Path) -> None:
        super().__init__(server, watch)
        self._chromium = chromium
        self._kind = kind
        self._memory = memory
        self.switch_on()

    def switch_on(self) -> None:
        self._use(
            self._chromium.launch_persistent_context(
                str(self._memory),
                executable_path=chromium_path(),
                args=[*ARGUMENTS, *self.ARGUMENTS],
                **self._kind.options,
            )
        )

    def switch_off(self) -> None:
        self.context.close()

    def die(self) -> None:
        """No page hears of it: the browser's process is killed as a phone kills an app."""
        os.kill(self._process_id(), signal.SIGKILL)
        with contextlib.suppress(Error):
            self.context.close()

    def _process_id(self) -> int:
        """The browser's own process holds the lock of its profile: a link named ``host-process``."""
        return int((self._memory / "SingletonLock").readlink().name.rpartition("-")[2])
