"""A surgeon of the simulated clinic sees what two years of own cases say, beside a dose that stays the table's.

The audit of them is read on its screen and in both of its files: the figures looked for are those of the records and of
what was planted.
"""

import csv
import gzip
import json
import re
from datetime import date
from io import BytesIO, StringIO
from pathlib import Path

import pytest
from playwright.sync_api import expect
from pypdf import PdfReader

from fixtures.demo.two_years.truth import BOTH_MEDIAL, HABITS
from tests.journeys import steps
from tests.journeys.people import Person
from tests.journeys.screens.case import Case
from tests.journeys.screens.findings import Findings
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.options import Options, mm
from tests.journeys.screens.own_results import OwnColumn, OwnResults
from tests.journeys.screens.patient_form import Details
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.results import Results
from tests.journeys.screens.signing import Signing

SIMULATED = Path(__file__).parents[2] / "fixtures/demo/two_years/two_years.json.gz"
YEARS = json.loads(gzip.decompress(SIMULATED.read_bytes()))
ACCOUNTS = YEARS["accounts"]
CLINIC = YEARS["clinic"]["id"]
BY_ID = {each["id"]: each for each in YEARS["records"]}
OPERATIONS = [each for each in YEARS["records"] if each["kind"] == "operation"]
HESTRAD = next(Person(**account) for account in ACCOUNTS if account["username"] == "hestrad")
SOMEBODY = Details(full_name="Embla Tvedt", born=("30", "1", "2020"), hospital_number="SK-9001")
RIGHT = "RIGHT eye, medial rectus"


def test_own_results_stand_beside_the_table_and_change_nothing_until_they_are_set(phone, shared_server):
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
    _read_the_audit(phone)

    phone.go(case_path)
    options.arrive()
    expect(options.option(steps.BOTH_MEDIAL)).to_contain_text("Own results, 57 cases")
    option = options.open(steps.BOTH_MEDIAL)
    column = OwnColumn(page)
    expect(column.row(RIGHT)).to_contain_text(mm(4.5))
    expect(column.row(RIGHT)).to_contain_text(mm(5.0))
    expect(page.get_by_text("The doses of own results would correct")).to_be_visible()
    expect(option.dose(RIGHT)).to_contain_text(mm(4.5))
    expect(option.dose(RIGHT)).not_to_contain_text("surgeon")

    column.take()
    expect(option.dose(RIGHT)).to_contain_text("surgeon 5.0")
    expect(option.dose(RIGHT)).to_contain_text("table 4.5")
    option.choose()
    Signing(page).arrive()
    phone.reconnect()
    steps.expect_sent(Signing(page))
    plan = next(record.body for record in reversed(shared_server.ledger(CLINIC)) if record.kind == "plan")
    assert [(dose["table_mm"], dose["mm"], dose["changed"]) for dose in plan["option"]["doses"]] == [
        (4.5, 5.0, True)
    ] * 2
    assert "by 57 cases at 88 % of the table" in plan["note"]


def _read_the_audit(phone) -> None:
    own = [each for each in OPERATIONS if each["body"]["surgeon_name"] == HESTRAD.full_name]
    phone.go("/results")
    results = Results(phone.page)
    results.counted()
    expect(results.number("Operated")).to_have_text(str(len(own)))
    again = re.compile(f"^{sum(_again_by_day_120(each) for each in own)} of {len(own)}, ")
    expect(results.number("Operated again by day 120")).to_have_text(again)

    chart = results.chart("Achieved against expected")
    expect(chart.get_by_role("img")).to_be_visible()
    told = chart.get_by_text("Achieved minus expected: mean").inner_text()
    mean, deviation, seen = re.fullmatch(
        r"Achieved minus expected: mean (\S+)\sΔ, standard deviation (\S+)\sΔ, (\d+) seen\.", told
    ).groups()
    reach = 1 + 3 * float(deviation) / int(seen) ** 0.5
    assert float(mean.replace("\N{MINUS SIGN}", "-")) == pytest.approx(_planted_mean(own), abs=reach)
    rows = results.figures("Achieved against expected").all()
    assert sum(int(row.get_by_role("cell").first.inner_text()) for row in rows) == int(seen)

    numbers = [results.number(label).inner_text() for label in ("Operated again by day 120", "Missing in the window")]
    page = " ".join(" ".join(sheet.extract_text() for sheet in PdfReader(BytesIO(results.keep_pdf())).pages).split())
    assert not [words for words in (told, *numbers) if " ".join(words.split()) not in page]
    _expect_nobody_in(results.keep_csv())

    results.put_together_by("Whole clinic")
    expect(results.number("Operated")).to_have_text(str(len(OPERATIONS)))


def _expect_nobody_in(text: str) -> None:
    """The file has rows, and none holds a name, a number or a birth date: all are before the earliest moved date."""
    people = [each["body"] for each in YEARS["records"] if each["kind"] == "patient"]
    names = [each["full_name"] for each in (*people, *ACCOUNTS)]
    words = {word for name in names for word in re.findall(r"\w{4,}", name)}
    hidden = (*words, *(each["hospital_number"] for each in people), *(each["born_on"] for each in people))

    rows = list(csv.DictReader(StringIO(text, newline=""), strict=True))
    assert len(OPERATIONS) / 2 < len(rows) <= len(OPERATIONS)
    assert {"age_band", "left_distance_pd", "within_10"} <= set(rows[0])
    assert not [each for each in hidden if each in text]


def _again_by_day_120(operation) -> bool:
    on = date.fromisoformat(operation["body"]["operated_on"])
    others = [each["body"]["operated_on"] for each in OPERATIONS if each["patient"] == operation["patient"]]
    return any(0 < (date.fromisoformat(other) - on).days <= 120 for other in others)


def _planted_mean(operations) -> float:
    """What the surgeon's true effect leaves uncorrected of what the signed plans expected, on average."""
    (effect,) = (
        each.effect for each in HABITS if (each.surgeon.full_name, each.family) == (HESTRAD.full_name, BOTH_MEDIAL)
    )
    lacks = []
    for operation in operations:
        option = BY_ID[operation["body"]["plan_id"]]["body"]["option"]
        expected = option["prediction"]["distance"]
        promised = abs(expected["before_pd"] - expected["mean_pd"])
        lacks.append((1 - effect) * promised if option["id"] == BOTH_MEDIAL else 0)
    return -sum(lacks) / len(lacks)


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
