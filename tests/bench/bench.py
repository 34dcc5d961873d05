"""What a measurement is given: the server, the browser, and how often to run."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from dataclasses import dataclass
from pathlib import Path
from tempfile import mkdtemp

from playwright.sync_api import Browser, Playwright

from tests.bench.slow import slowed
from tests.journeys.browser.chromium import PLAIN, chromium_path
from tests.journeys.site.server import Server, running_server

SPEEDS = (1, 4)


@dataclass(frozen=True, kw_only=True)
class Bench:
    """``runs`` is for expensive measurements, ``many`` for cheap ones; ``patients`` are pushed and pulled.

    ``ledgers`` are the lengths of ledgers, the shortest first; ``devices`` come at once;
    ``compared`` records are sent beside another program or beside bare rows.
    """

    server: Server
    browser: Browser
    browser_process: int
    loaded_state: Path
    build: Path
    scratch: Path
    runs: int
    many: int
    patients: int
    ledgers: tuple[int, ...]
    devices: int
    compared: int

    @contextmanager
    def fresh_server(self) -> Iterator[Server]:
        """Another server, with nothing but the demo clinic."""
        folder = Path(mkdtemp(dir=self.scratch))
        with running_server(self.loaded_state, self.build, folder) as server:
            yield server

    def at(self, speed: int) -> AbstractContextManager[None]:
        """1 as it is, 4 with every renderer four times slower."""
        return slowed(self.browser_process) if speed > 1 else nullcontext()


@contextmanager
def started_browser(playwright: Playwright) -> Iterator[tuple[Browser, int]]:
    """A Chromium, and the number of its process."""
    browser = playwright.chromium.launch(executable_path=chromium_path(), args=list(PLAIN))
    session = browser.new_browser_cdp_session()
    processes = session.send("SystemInfo.getProcessInfo")["processInfo"]
    try:
        yield browser, next(one["id"] for one in processes if one["type"] == "browser")
    finally:
        browser.close()
