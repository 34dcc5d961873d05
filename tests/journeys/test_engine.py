"""An engine that does not pass its own test never plans an operation; what was signed before can still be read."""

from pathlib import Path

import pytest
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.accessibility import violations
from tests.journeys.people import SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.options import Options
from tests.journeys.screens.patients import Patients
from tests.journeys.site.releases import altered_tree, copy_build, deploy

DISTRUSTED = "The engine gave a wrong answer to one of its test cases, so it will not calculate."
TO_MEASURE = "Wenna Harrowgate"


@pytest.fixture
def build_folder(app_build, tmp_path):
    return copy_build(app_build, tmp_path / "build")


@pytest.fixture
def careless_tree(tmp_path) -> Path:
    """A tree in which one dose of one table was changed by a slip of the hand."""
    project = altered_tree(tmp_path / "careless", copying="planner")
    table = project / "planner/tables/wright-after-parks.toml"
    row = "deviation_pd = 40, both_recess_mm = 5.5"
    text = table.read_text()
    assert text.count(row) == 1
    table.write_text(text.replace(row, "deviation_pd = 40, both_recess_mm = 6.5"))
    return project


def test_an_engine_with_one_wrong_dose_calculates_nothing(phone, build_folder, careless_tree):
    deploy(careless_tree, build_folder)
    steps.settle_in(phone, SURGEON).open(TO_MEASURE)
    page = phone.page

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


def test_a_card_that_was_opened_before_a_wrong_engine_came_is_still_there(phone, build_folder, careless_tree):
    steps.settle_in(phone, SURGEON)
    steps.ready_for_a_day_without_network(phone)
    page = phone.page
    steps.enter_patient(page, steps.SOMEBODY)
    steps.measure_esotropia(page)
    check_word = steps.sign_both_medial(page).check_word

    deploy(careless_tree, build_folder)
    phone.look_for_update()
    page.get_by_role("button", name="Use it now").click()
    Unlock(page).enter()
    card = Card(page)
    card.arrive()
    assert card.check_word == check_word
    expect(page.get_by_text("As kept on this device.")).to_be_visible()
    phone.go("/patients")
    Patients(page).open(steps.SOMEBODY.full_name)
    Case(page).to_options()
    expect(page.get_by_text(DISTRUSTED)).to_be_visible()
    expect(Options(page).option(steps.BOTH_MEDIAL)).to_have_count(0)
