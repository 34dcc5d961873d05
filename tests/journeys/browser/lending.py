"""Devices that go from journey to journey, each with one person settled in: a start costs more than most walks."""

import re
from collections.abc import Callable

from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Device, Kind
from tests.journeys.browser.watch import NO_NETWORK
from tests.journeys.people import Person
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.status import Status

CARRYING = re.compile("/api/v1/carrying$")
"""The last that a new phone fetches: the key by which the clinic knows its work when another one brings it."""


def expect_no_trouble(device: Device) -> None:
    """Nor is any expected from now on."""
    assert device.watch.troubles == [], device.watch.troubles
    device.watch.start_afresh()


class Drawer:
    """Devices that ``make`` makes in front of one server. One that does not come back as it went is not lent again.

    A device at rest goes on asking for news, and the server may be down for somebody else's journey.
    """

    def __init__(self, make: Callable[[], Device]) -> None:
        self._make = make
        self._at_rest: dict[Person, Device] = {}

    def lend(self, person: Person, kind: Kind = PHONE) -> Device:
        """The clinic's patients are in view."""
        device = self._at_rest.pop(person, None)
        if device is None:
            device = self._make()
            with device.page.expect_response(CARRYING):
                steps.settle_in(device, person)
        else:
            expect_no_trouble(device)
            self._brought_up_to_date(device)
        device.be(kind)
        Patients(device.page).arrive()
        return device

    def take_back(self, person: Person, device: Device) -> None:
        """Everything sent, one tab, nothing in the way of its calls, and no trouble seen since it was lent."""
        try:
            device.server.start_if_down()
            device.context.unroute_all()
            device.reconnect()
            for tab in device.context.pages:
                if tab != device.page:
                    tab.close()
            patients = Patients(device.go("/patients"))
            patients.arrive()
            steps.expect_sent(patients)
            expect_no_trouble(device)
        except BaseException:
            device.close()
            raise
        device.watch.expect(NO_NETWORK)
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
