"""A new release waits until a person takes it, and takes nothing away."""

import re

import pytest
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.handing import HandOver
from tests.journeys.screens.patient_form import PatientForm
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.settings import Settings
from tests.journeys.screens.status import Status
from tests.journeys.site.releases import altered_tree, copy_build, deploy

NEXT_VERSION = "99.1.0"
PRESENT_CLIENT, NEXT_CLIENT = "export const CLIENT = 1;", "export const CLIENT = 2;"
TOO_OLD = re.compile("This version of the app is too old to send")
RUNS = "name => document.querySelector('script[type=module]')?.src.includes(name)"
LEAST_FILE_BYTES = 1_000
MOST_LOADS = 3
"""The browser may hold a new release back until the page was opened anew."""
SETTLED_MS = 1_500
"""An app that would reload by itself has done so by then."""
OFFERED_MS = 60_000
"""A release is offered when it and its engine are on the phone whole, which takes a busy machine a while."""


@pytest.fixture
def build_folder(app_build, tmp_path):
    return copy_build(app_build, tmp_path / "build")


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
    phone, server, build_folder, tmp_path
):
    steps.settle_in(phone, SURGEON)
    steps.ready_for_a_day_without_network(phone)
    page = phone.page
    before = len(server.ledger())
    server.stop()
    server.more_variables["DJANGO_SETTINGS_MODULE"] = "tests.journeys.site.newer_settings"
    server.start()

    phone.watch.expect("426|ERR_")
    steps.enter_patient(page, steps.SOMEBODY)
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
    expect(Patients(page).entry(steps.SOMEBODY.full_name)).to_be_visible()

    new = deploy_next_protocol(tmp_path / "next", build_folder)
    phone.look_for_update()
    page.get_by_role("button", name="Use it now").click(timeout=OFFERED_MS)
    page.wait_for_function(RUNS, arg=new.name, timeout=OFFERED_MS)
    Unlock(page).enter()
    patients = Patients(page)
    patients.arrive()
    steps.expect_sent(patients)
    assert [record.body["full_name"] for record in server.ledger()[before:]] == [steps.SOMEBODY.full_name]


def test_an_update_asks_first_and_what_was_typed_survives_it(phone, server, build_folder, tmp_path):
    steps.settle_in(phone, SURGEON)
    steps.ready_for_a_day_without_network(phone)
    page = phone.page
    Patients(page).new()
    form = PatientForm(page)
    form.arrive()
    form.field("Full name").fill("Half Typed")
    loads = []
    page.on("domcontentloaded", lambda _: loads.append(page.url))

    new = deploy_next_version(tmp_path / "next", build_folder)
    phone.look_for_update()
    offer = page.get_by_role("status").filter(has_text="A new version is ready.")
    expect(offer).to_be_visible(timeout=OFFERED_MS)
    page.wait_for_timeout(SETTLED_MS)
    assert loads == [], "nothing is loaded again before a person says so"
    expect(form.field("Full name")).to_have_value("Half Typed")

    page.get_by_role("button", name="Use it now").click()
    page.wait_for_function(RUNS, arg=new.name, timeout=OFFERED_MS)
    Unlock(page).enter()
    form.arrive()
    expect(form.field("Full name")).to_have_value("Half Typed")
    assert 1 <= len(loads) <= MOST_LOADS
    phone.go("/settings")
    Settings(page).arrive()
    expect(page.get_by_text(NEXT_VERSION)).to_be_visible()
