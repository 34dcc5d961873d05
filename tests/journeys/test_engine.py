"""An engine that does not pass its own test never plans an operation; what was signed before can still be read.

One phone, to which the wrong engine comes with an update.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.accessibility import violations
from tests.journeys.browser.device import PHONE, Device, Passing
from tests.journeys.browser.watch import Watch
from tests.journeys.newcomers import somebody
from tests.journeys.people import SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.options import Options
from tests.journeys.screens.patients import Patients
from tests.journeys.site.releases import altered_tree, copy_build, deploy
from tests.journeys.site.server import Server, running_server

DISTRUSTED = "The engine gave a wrong answer to one of its test cases, so it will not calculate."
TO_MEASURE = "Wenna Harrowgate"
RUNS = "name => document.querySelector('script[type=module]')?.src.includes(name)"


@dataclass(frozen=True, kw_only=True)
class Before:
    """What was on the phone before the wrong engine came."""

    patient: str
    path: str
    check_word: str


@pytest.fixture(scope="module")
def build_folder(app_build, tmp_path_factory) -> Path:
    return copy_build(app_build, tmp_path_factory.mktemp("engine") / "build")


@pytest.fixture(scope="module")
def server(loaded_state, build_folder, tmp_path_factory) -> Iterator[Server]:
    with running_server(loaded_state, build_folder, tmp_path_factory.mktemp("server")) as server:
        yield server


@pytest.fixture(scope="module")
def phone(server, browser) -> Iterator[Device]:
    device = Passing(server, Watch(), browser=browser, kind=PHONE)
    yield device
    device.close()

    assert device.watch.troubles == []


@pytest.fixture(scope="module")
def careless_tree(tmp_path_factory) -> Path:
    """A tree in which one dose of one table was changed by a slip of the hand."""
    project = altered_tree(tmp_path_factory.mktemp("careless"), copying="planner")
    table = project / "planner/tables/wright-after-parks.toml"
    row = "deviation_pd = 40, both_recess_mm = 5.5"
    text = table.read_text()
    assert text.count(row) == 1
    table.write_text(text.replace(row, "deviation_pd = 40, both_recess_mm = 6.5"))
    return project


@pytest.fixture(scope="module")
def before(phone, build_folder, careless_tree) -> Before:
    """A plan is signed; then the wrong engine comes, and is in use."""
    steps.settle_in(phone, SURGEON)
    steps.ready_for_a_day_without_network(phone)
    page, known = phone.page, somebody()
    steps.enter_patient(page, known)
    steps.measure_esotropia(page)
    card = steps.sign_both_medial(page)
    signed = Before(patient=known.full_name, path=page.url.partition("#")[2], check_word=card.check_word)
    steps.expect_sent(card)

    new = deploy(careless_tree, build_folder)
    phone.look_for_update()
    page.get_by_role("button", name="Use it now").click()
    page.wait_for_function(RUNS, arg=new.name)
    Unlock(page).enter()
    return signed


def test_an_engine_with_one_wrong_dose_calculates_nothing(phone, before):
    page = phone.go("/patients")
    Patients(page).open(TO_MEASURE)
    findings = steps.measure_esotropia(page)
    expect(page.get_by_text(DISTRUSTED)).to_be_visible()
    expect(page.get_by_text("What you entered is safe.")).to_be_visible()
    assert violations(page) == []
    page.get_by_role("button", name="Try again").click()
    expect(page.get_by_text(DISTRUSTED)).to_be_visible()
    findings.to_options()
    expect(page.get_by_text(DISTRUSTED)).to_be_visible()
    expect(page.get_by_role("article")).to_have_count(0)
    steps.expect_sent(findings)


def test_a_card_that_was_opened_before_a_wrong_engine_came_is_still_there(phone, before):
    page = phone.go(before.path)
    card = Card(page)
    card.arrive()
    assert card.check_word == before.check_word
    expect(page.get_by_text("As kept on this device.")).to_be_visible()
    phone.go("/patients")
    Patients(page).open(before.patient)
    Case(page).to_options()
    expect(page.get_by_text(DISTRUSTED)).to_be_visible()
    expect(Options(page).option(steps.BOTH_MEDIAL)).to_have_count(0)
