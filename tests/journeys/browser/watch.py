"""Collects what must not happen behind the screens: errors and warnings of the console, faults, failed requests."""

import re

from playwright.sync_api import BrowserContext, ConsoleMessage, Page, Request

BAD_CONSOLE = ("error", "warning")
LEFT_BEHIND = "net::ERR_ABORTED"
"""A page that is left or loaded again gives up its own requests."""
NO_NETWORK = re.compile(
    "ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|ERR_CONNECTION_RESET|ERR_CONNECTION_CLOSED|ERR_EMPTY_RESPONSE"
    "|ERR_NETWORK_CHANGED|ERR_SOCKET_NOT_CONNECTED"
)


class Watch:
    """``troubles`` is what was seen and not expected, as lines to read.

    An answer of 400 and above is an error on the console too; to be told of every answer would cost more than to load
    the app.
    """

    def __init__(self) -> None:
        self._seen: list[str] = []
        self._expected: list[re.Pattern[str]] = []

    def attach(self, context: BrowserContext) -> None:
        context.on("console", self._console)
        context.on("requestfailed", self._failed)
        context.on("weberror", lambda error: self._note(f"fault: {error.error}"))
        context.on("page", lambda page: page.on("crash", self._crashed))

    def expect(self, pattern: str | re.Pattern[str]) -> None:
        """From the journey itself such a line follows, so it is no trouble."""
        self._expected.append(re.compile(pattern))

    def start_afresh(self) -> None:
        """Nothing was seen, and nothing is expected."""
        self._seen.clear()
        self._expected.clear()

    @property
    def troubles(self) -> list[str]:
        return [line for line in self._seen if not any(pattern.search(line) for pattern in self._expected)]

    def _note(self, line: str) -> None:
        self._seen.append(line)

    def _console(self, message: ConsoleMessage) -> None:
        if message.type in BAD_CONSOLE:
            self._note(f"console {message.type}: {message.text} ({message.location['url']})")

    def _failed(self, request: Request) -> None:
        if request.failure != LEFT_BEHIND:
            self._note(f"request failed: {request.method} {request.url}: {request.failure}")

    def _crashed(self, page: Page) -> None:
        self._note(f"crash: {page.url}")
