"""A new release waits until a person takes it, and takes nothing away.

One phone and one server for both journeys; each deploys a release of its own.
"""

import re

import pytest
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import PHONE, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.handing import HandOver
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.settings import Settings
from tests.journeys.screens.status import Status
from tests.journeys.site.releases import altered_tree, copy_build, deploy
from tests.journeys.site.server import running_server

NEXT_VERSION = "99.1.0"
NEWER = {"DJANGO_SETTINGS_MODULE": "tests.journeys.site.newer_settings"}
PRESENT_CLIENT, NEXT_CLIENT = "export const CLIENT = 1;", "export const CLIENT = 2;"
TOO_OLD = re.compile("This version of the app is too old to send")
RUNS = "name => document.querySelector('script[type=module]')?.src.includes(name)"
LEAST_FILE_BYTES = 1_000
MOST_LOADS = 3
"""The browser may hold a new release back until the page was opened anew."""
SETTLED_MS = 1_500
"""An app that would reload by itself has done so by then."""


@pytest.fixture(scope="module")
def build_folder(app_build, tmp_path_factory):
    return copy_build(app_build, tmp_path_factory.mktemp("update") / "build")


@pytest.fixture(scope="module")
def server(loaded_state, build_folder, tmp_path_factory):
    with running_server(loaded_state, build_folder, tmp_path_factory.mktemp("server")) as server:
        yield server


@pytest.fixture(scope="module")
def phone(server, browser):
    device = Passing(server, Watch(), browser=browser, kind=PHONE)
    steps.settle_in(device, SURGEON)
    steps.ready_for_a_day_without_network(device)
    yield device
    device.close()

    assert device.watch.troubles == []


@pytest.fixture
def asking_for_a_newer_app(server):
    """Has the server take nothing from an app that speaks today's protocol, for as long as the journey lasts."""

    def change(variables):
        server.stop()
        server.more_variables = variables
        server.start()

    yield lambda: change(NEWER)
    change({})


def deploy_next_version(folder, build_folder):
    project = altered_tree(folder, copying="pyproject.toml")
    pyproject = project / "pyproject.toml"
    changed = re.sub(
        r"^version = .*$", f'version = "{NEXT_VERSION}"', pyproject.read_text(), count=1, flags=re.MULTILINE
    )
    assert NEXT_VERSION in changed
    pyproject.write_text(changed)
    release = deploy(project, build_folder)
    assert release.version == NEXT_VERSION
    return release


def deploy_next_protocol(folder, build_folder):
    """An app that speaks the protocol which the newer server asks for."""
    project = altered_tree(folder, copying="static")
    module = project / "static" / "app" / "session" / "server.js"
    present = module.read_text()
    assert PRESENT_CLIENT in present
    module.write_text(present.replace(PRESENT_CLIENT, NEXT_CLIENT))
    return deploy(project, build_folder)


def test_an_app_too_old_to_send_says_so_reads_and_exports_and_sends_its_work_once_when_it_is_updated(
    phone, server, asking_for_a_newer_app, build_folder, tmp_path
):
    page, known = phone.page, somebody()
    phone.go("/patients")
    before = len(server.ledger())
    asking_for_a_newer_app()

    phone.watch.expect("426|ERR_")
    steps.enter_patient(page, known)
    phone.go("/status")
    status = Status(page)
    status.arrive()
    status.send_and_fetch()
    expect(page.get_by_text(TOO_OLD).first).to_be_visible()
    assert len(server.ledger()) == before
    phone.go("/hand-over")
    giving = HandOver(page)
    giving.arrive()
    giving.make()
    assert giving.words
    assert giving.save(tmp_path).stat().st_size > LEAST_FILE_BYTES
    phone.go("/patients")
    expect(Patients(page).entry(known.full_name)).to_be_visible()

    new = deploy_next_protocol(tmp_path / "next", build_folder)
    phone.look_for_update()
    page.get_by_role("button", name="Use it now").click()
    page.wait_for_function(RUNS, arg=new.name)
    Unlock(page).enter()
    patients = Patients(page)
    patients.arrive()
    steps.expect_sent(patients)
    assert [record.body["full_name"] for record in server.ledger()[before:]] == [known.full_name]


def test_an_update_asks_first_and_what_was_typed_survives_it(phone, build_folder, tmp_path):
    page = phone.page
    phone.go("/patients")
    Patients(page).new()
    form = PatientForm(page)
    form.arrive()
    form.field("Full name").fill("Half Typed")
    loads = []
    page.on("domcontentloaded", lambda _: loads.append(page.url))

    new = deploy_next_version(tmp_path / "next", build_folder)
    phone.look_for_update()
    offer = page.get_by_role("status").filter(has_text="A new version is ready.")
    expect(offer).to_be_visible()
    page.wait_for_timeout(SETTLED_MS)
    assert loads == [], "nothing is loaded again before a person says so"
    expect(form.field("Full name")).to_have_value("Half Typed")

    page.get_by_role("button", name="Use it now").click()
    page.wait_for_function(RUNS, arg=new.name)
    Unlock(page).enter()
    form.arrive()
    expect(form.field("Full name")).to_have_value("Half Typed")
    assert 1 <= len(loads) <= MOST_LOADS
    phone.go("/settings")
    Settings(page).arrive()
    expect(page.get_by_text(NEXT_VERSION)).to_be_visible()
