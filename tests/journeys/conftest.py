"""Journeys: what people do with the whole product, in a real Chromium against the real server.

    site/       the server in its own process, and the releases it deploys
    browser/    phones and tablets, and the watch that nothing goes wrong behind the screens
    screens/    one module for each screen of the app, in the words that a person reads on it
    steps.py    what several journeys do on the way to their own promise

All serve one build of the present tree. When a test ends, each device must have seen no error, warning, policy
violation or failed request that the journey did not call for.

To settle in on a new device costs more than most walks, so devices and a server go from journey to journey:

    shared_server   on which all journeys leave what they did; one that ends it need not start it again
    settled         lends a phone, or a tablet, on which that person is settled in, in front of the shared server
    lasting         lends one that can be switched off, or die, and be switched on again; its camera sees ``film``
    post            what somebody writes elsewhere reaches the shared server
    sign_anew       a patient of the demo clinic once more, whom no other journey touches
    set_role        changes what an account may do
    new_device      makes one on which nobody has settled in yet; ``phone`` is such a phone

A journey that wants the demo clinic as it is on its first day, or a release of its own, runs a server of its own.
"""

from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from clinic.build.folders import folders
from tests.clinic.pen import Pen
from tests.journeys.browser.chromium import MISSING, chromium_path
from tests.journeys.browser.device import PHONE, Device, Kind, Lasting, Passing
from tests.journeys.browser.lending import Drawer
from tests.journeys.browser.paper import camera_on
from tests.journeys.browser.watch import Watch
from tests.journeys.newcomers import hospital_number
from tests.journeys.people import SURGEON, Person
from tests.journeys.site.post import Raw, post_as
from tests.journeys.site.releases import copy_build
from tests.journeys.site.server import Server, load_demo, running_server
from tests.journeys.site.signed import once_more

HERE = Path(__file__).parent
Lend = Callable[..., Device]


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


@pytest.fixture(scope="session")
def shared_server(loaded_state, app_build, tmp_path_factory) -> Iterator[Server]:
    """With the demo clinic, and with what other journeys left there."""
    with running_server(loaded_state, app_build, tmp_path_factory.mktemp("shared")) as server:
        yield server


@pytest.fixture
def new_device(shared_server, browser) -> Iterator[Callable[[Kind], Device]]:
    """Makes a device that is thrown away afterwards, with nobody settled in on it."""
    devices: list[Device] = []

    def make(kind: Kind) -> Device:
        devices.append(Passing(shared_server, Watch(), browser=browser, kind=kind))
        return devices[-1]

    yield make
    _put_away(devices)


@pytest.fixture(scope="session")
def drawer(shared_server, browser) -> Iterator[Drawer]:
    """Where settled devices lie between journeys."""
    drawer = Drawer(lambda: Passing(shared_server, Watch(), browser=browser, kind=PHONE))
    yield drawer
    drawer.close()


@pytest.fixture
def settled(drawer) -> Iterator[Lend]:
    """Lends a device that is thrown away when all is done."""
    yield from _lending(drawer)


@pytest.fixture(scope="session")
def film(tmp_path_factory) -> Path:
    """Where a journey puts what the camera is to see."""
    return tmp_path_factory.mktemp("camera") / "film.y4m"


@pytest.fixture(scope="session")
def lasting_drawer(shared_server, playwright, film, tmp_path_factory) -> Iterator[Drawer]:
    """Where the phone lies that can be switched off."""

    class WithCamera(Lasting):
        ARGUMENTS = camera_on(film)

    def make() -> Device:
        memory = tmp_path_factory.mktemp("phone")
        return WithCamera(shared_server, Watch(), chromium=playwright.chromium, kind=PHONE, memory=memory)

    drawer = Drawer(make)
    yield drawer
    drawer.close()


@pytest.fixture
def lasting(lasting_drawer) -> Iterator[Lend]:
    """Lends a :class:`Lasting` one."""
    yield from _lending(lasting_drawer)


@pytest.fixture
def post(shared_server, playwright) -> Iterator[Callable[[Person, Callable[[Pen], list[Raw]]], list[Raw]]]:
    """Has somebody write elsewhere, by the API of the shared server."""
    request = playwright.request.new_context()
    yield lambda person, write: post_as(person, shared_server, request, write)
    request.dispose()


@pytest.fixture
def sign_anew(post) -> Callable[..., list[Raw]]:
    """What the demo clinic signed for one person, signed for another: see :func:`once_more`."""

    def sign(name: str, *, full_name: str) -> list[Raw]:
        number = hospital_number()
        return post(SURGEON, lambda pen: once_more(pen, name, full_name=full_name, hospital_number=number))

    return sign


@pytest.fixture
def set_role(shared_server) -> Iterator[Callable[[Person, str], None]]:
    """Gives somebody another role, as a coordinator would, for as long as the journey lasts."""
    changed: set[Person] = set()

    def change(person: Person, role: str) -> None:
        changed.add(person)
        shared_server.set_role(person.username, role)

    yield change
    for person in changed:
        shared_server.set_role(person.username, person.role)


@pytest.fixture
def phone(new_device) -> Device:
    return new_device(PHONE)


def _lending(drawer: Drawer) -> Iterator[Lend]:
    """The device is of the kind that is asked for, a phone at first; the clinic's patients are in view."""
    with ExitStack() as lent:

        def lend(person: Person, kind: Kind = PHONE) -> Device:
            device = drawer.lend(person, kind)
            lent.callback(drawer.take_back, person, device)
            return device

        yield lend


def _put_away(devices: list[Device]) -> None:
    for device in devices:
        device.close()

    assert [trouble for device in devices for trouble in device.watch.troubles] == []
