"""Phones that go from journey to journey, each with one person settled in: a start costs more than most walks."""

import re

from playwright.sync_api import Browser

from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Device, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.people import Person
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status
from tests.journeys.site.server import Server

CARRYING = re.compile("/api/v1/carrying$")
"""The last that a new phone fetches: the key by which the clinic knows its work when another one brings it."""
LONG_MS = 60_000


class Drawer:
    """In front of one server. A phone that does not come back as it went is not lent again."""

    def __init__(self, server: Server, browser: Browser) -> None:
        self._server = server
        self._browser = browser
        self._at_rest: dict[Person, Device] = {}

    def lend(self, person: Person) -> Device:
        """The clinic's patients are in view."""
        device = self._at_rest.pop(person, None)
        if device is None:
            device = Passing(self._server, Watch(), browser=self._browser, kind=PHONE)
            with device.page.expect_response(CARRYING, timeout=LONG_MS):
                steps.settle_in(device, person)
        else:
            self._brought_up_to_date(device)
        Patients(device.page).arrive()
        return device

    def take_back(self, person: Person, device: Device) -> None:
        """Everything sent, one tab, nothing in the way of its calls, and no trouble seen since it was lent."""
        try:
            device.context.unroute_all()
            device.reconnect()
            for tab in device.context.pages:
                if tab != device.page:
                    tab.close()
            device.page.set_viewport_size({"width": PHONE.width, "height": PHONE.height})
            patients = Patients(device.go("/patients"))
            patients.arrive()
            steps.expect_sent(patients)
            assert device.watch.troubles == []
        except BaseException:
            device.close()
            raise
        device.watch.start_afresh()
        self._at_rest[person] = device

    def _brought_up_to_date(self, device: Device) -> None:
        """It may have locked itself, and asks for what the clinic heard meanwhile."""
        if Unlock(device.page).is_shown():
            Unlock(device.page).enter()
        status = Status(device.go("/status"))
        status.arrive()
        status.send_and_fetch()
        device.go("/patients")

    def close(self) -> None:
        for device in self._at_rest.values():
            device.close()
