"""A surgeon of the simulated clinic sees what two years of own cases say, beside a dose that stays the table's."""

import gzip
import json
from pathlib import Path

import pytest
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import Person
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.options import Options, mm
from tests.journeys.screens.own_results import OwnColumn, OwnResults
from tests.journeys.screens.patient_form import Details
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.signing import Signing

SIMULATED = Path(__file__).parents[2] / "fixtures/demo/two_years/two_years.json.gz"
YEARS = json.loads(gzip.decompress(SIMULATED.read_bytes()))
ACCOUNTS = YEARS["accounts"]
CLINIC = YEARS["clinic"]["id"]
HESTRAD = next(Person(**account) for account in ACCOUNTS if account["username"] == "hestrad")
SOMEBODY = Details(full_name="Embla Tvedt", born=("30", "1", "2020"), hospital_number="SK-9001")
RIGHT = "RIGHT eye, medial rectus"


@pytest.fixture
def server(shared_server):
    return shared_server


def test_own_results_stand_beside_the_table_and_change_nothing_until_they_are_set(phone, server):
    page = phone.page
    steps.settle_in(phone, HESTRAD)
    steps.ready_for_a_day_without_network(phone)
    _measure_30_eso(page)
    options = Options(page)
    options.arrive()
    expect(options.option(steps.BOTH_MEDIAL)).to_contain_text(mm(4.5))
    expect(options.option(steps.BOTH_MEDIAL).get_by_text("Own results")).to_have_count(0)
    case_path = page.url.partition("#")[2]

    phone.cut_network()
    phone.go("/own-results")
    own = OwnResults(page)
    own.arrive()
    own.switch_on(steps.BOTH_MEDIAL)
    expect(own.family(steps.BOTH_MEDIAL)).to_contain_text("57 of 76 operations counted")
    expect(own.family(steps.BOTH_MEDIAL)).to_contain_text("88 % of what the table promises")
    expect(page.get_by_text("simulated clinic")).to_be_visible()

    phone.go(case_path)
    options.arrive()
    expect(options.option(steps.BOTH_MEDIAL)).to_contain_text("Own results, 57 cases")
    option = options.open(steps.BOTH_MEDIAL)
    column = OwnColumn(page)
    expect(column.row(RIGHT)).to_contain_text(mm(4.5))
    expect(column.row(RIGHT)).to_contain_text(mm(5.0))
    expect(option.dose(RIGHT)).to_contain_text(mm(4.5))
    expect(option.dose(RIGHT)).not_to_contain_text("surgeon")

    column.take()
    expect(option.dose(RIGHT)).to_contain_text("surgeon 5.0")
    expect(option.dose(RIGHT)).to_contain_text("table 4.5")
    option.choose()
    Signing(page).arrive()
    phone.reconnect()
    steps.expect_sent(Signing(page))
    plan = next(record.body for record in reversed(server.ledger(CLINIC)) if record.kind == "plan")
    assert [(dose["table_mm"], dose["mm"], dose["changed"]) for dose in plan["option"]["doses"]] == [
        (4.5, 5.0, True)
    ] * 2
    assert "by 57 cases at 88 % of the table" in plan["note"]


def _measure_30_eso(page) -> None:
    Patients(page).arrive()
    steps.enter_patient(page, SOMEBODY)
    Case(page).step("Measure")
    measure = Measure(page)
    measure.arrive()
    measure.begin()
    measure.read("eso", 30)
    measure.next()
    measure.read("eso", 30)
    measure.done()
    measure.save()
    findings = Findings(page)
    findings.arrive()
    findings.to_options()
