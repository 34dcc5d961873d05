"""Journeys: what people do with the whole product, in a real Chromium against the real server.

    site/       the server in its own process, and the releases it deploys
    browser/    phones and tablets, and the watch that nothing goes wrong behind the screens
    screens/    one module for each screen of the app, in the words that a person reads on it
    steps.py    what several journeys do on the way to their own promise

A test has a server of its own with the demo clinic freshly loaded, unless its module says that it shares one; who
minds neither that nor what was done on the phone before asks for one that is ``settled`` already. All serve one build
of the present tree. When a test ends, each device must have seen no error, warning, policy violation or failed request
that the journey did not call for.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from clinic.build.folders import folders
from tests.journeys.browser.chromium import MISSING, chromium_path
from tests.journeys.browser.device import PHONE, TABLET, Device, Kind, Lasting, Passing
from tests.journeys.browser.lending import Drawer
from tests.journeys.browser.watch import Watch
from tests.journeys.people import Person
from tests.journeys.site.releases import copy_build
from tests.journeys.site.server import Server, load_demo, running_server

HERE = Path(__file__).parent


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """All that is promised here is a journey."""
    for item in items:
        if HERE in item.path.parents:
            item.add_marker(pytest.mark.journey)
            if chromium_path() is None:
                item.add_marker(pytest.mark.skip(reason=MISSING))


@pytest.fixture(scope="session")
def app_build(built, tmp_path_factory) -> Path:
    """The present tree's build, which no other test touches; serve it, but deploy into a copy."""
    return copy_build(folders().build, tmp_path_factory.mktemp("app") / "build")


@pytest.fixture(scope="session")
def loaded_state(app_build, tmp_path_factory) -> Path:
    """A database with the demo clinic, to be copied."""
    state = tmp_path_factory.mktemp("loaded")
    load_demo(state, app_build)
    return state


@pytest.fixture
def build_folder(app_build) -> Path:
    """What the test's server serves; a journey that deploys takes a copy in its place."""
    return app_build


@pytest.fixture(scope="session")
def shared_server(loaded_state, app_build, tmp_path_factory) -> Iterator[Server]:
    """For journeys that do not mind what others left there: a start costs a second or two."""
    with running_server(loaded_state, app_build, tmp_path_factory.mktemp("shared")) as server:
        yield server


@pytest.fixture
def server(loaded_state, build_folder, tmp_path) -> Iterator[Server]:
    """Running, with the demo clinic as it is on its first day."""
    with running_server(loaded_state, build_folder, tmp_path) as server:
        yield server


@pytest.fixture
def new_device(server, browser) -> Iterator[Callable[[Kind], Device]]:
    """Makes a device that is thrown away afterwards."""
    devices: list[Device] = []

    def make(kind: Kind) -> Device:
        devices.append(Passing(server, Watch(), browser=browser, kind=kind))
        return devices[-1]

    yield make
    _put_away(devices)


@pytest.fixture(scope="session")
def drawer(shared_server, browser) -> Iterator[Drawer]:
    """Where settled phones lie between journeys."""
    drawer = Drawer(shared_server, browser)
    yield drawer
    drawer.close()


@pytest.fixture
def settled(drawer) -> Iterator[Callable[[Person], Device]]:
    """Lends a phone on which a person is settled in, in front of the shared server; the patients are in view."""
    lent: list[tuple[Person, Device]] = []

    def lend(person: Person) -> Device:
        lent.append((person, drawer.lend(person)))
        return lent[-1][1]

    yield lend
    for person, device in lent:
        drawer.take_back(person, device)


@pytest.fixture
def lasting_phone(server, playwright, tmp_path) -> Iterator[Lasting]:
    """A phone that can be switched off, or die, and be switched on again."""
    device = Lasting(server, Watch(), chromium=playwright.chromium, kind=PHONE, memory=tmp_path / "phone")
    yield device
    _put_away([device])


@pytest.fixture
def phone(new_device) -> Device:
    return new_device(PHONE)


@pytest.fixture
def tablet(new_device) -> Device:
    return new_device(TABLET)


def _put_away(devices: list[Device]) -> None:
    for device in devices:
        device.close()

    assert [trouble for device in devices for trouble in device.watch.troubles] == []
