"""Last year's notebook comes in whole or not at all and goes in one step; a case leaves as FHIR and is known again."""

import json

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import PHONE
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.exchanging import Exchange, Export, Import, Notebook

LIMIT_MS = 60_000


def operated():
    """A patient of the demo clinic who has been operated on."""
    return next(record["patient"] for record in DEMO["records"] if record["kind"] == "operation")


def by_notebook(phone, tmp_path):
    page = phone.page
    notebook = Notebook(page)
    notebook.arrive()
    names, example = notebook.empty_table(tmp_path).read_text(encoding="utf-8").splitlines()[:2]
    example = example.replace("EXAMPLE", "17-2025")
    wrong = tmp_path / "wrong.csv"
    wrong.write_text("\n".join((names, example, example.replace("17-2025", "18-2025").replace("35 eso", "35"))))
    notebook.choose(wrong)
    expect(page.get_by_text("Row 3, before_distance_pd")).to_be_visible(timeout=LIMIT_MS)
    expect(page.get_by_text("This does not say whether it is eso or exo.")).to_be_visible()
    expect(notebook.foot).to_have_count(0)

    right = tmp_path / "last-year.csv"
    right.write_text("\n".join((names, example, example.replace("17-2025", "18-2025"))))
    notebook.choose(right)
    expect(notebook.foot).to_contain_text("Carry over 2 cases", timeout=LIMIT_MS)
    notebook.step("Carry over 2 cases")
    expect(notebook.carried_over).to_contain_text("last-year.csv", timeout=LIMIT_MS)
    phone.go("/own-results")
    expect(page.get_by_role("heading", name="Recess both MR")).to_be_visible(timeout=LIMIT_MS)
    phone.go("/notebook")
    notebook.arrive()
    notebook.choose(right)
    expect(page.get_by_text("Nothing in it is new.")).to_be_visible(timeout=LIMIT_MS)
    notebook.undo("It was the wrong year.")
    expect(notebook.carried_over).to_contain_text("Nothing yet.", timeout=LIMIT_MS)


def exported(page, tmp_path):
    Case(page).arrive()
    page.get_by_role("link", name="Export as FHIR").click()
    giving = Export(page)
    giving.arrive()
    giving.make()
    return giving.save(tmp_path)


def kinds_in(file):
    return {entry["resource"]["resourceType"] for entry in json.loads(file.read_text(encoding="utf-8"))["entry"]}


def test_a_notebook_and_a_case_by_file_without_a_network(new_device, server, tmp_path):
    phone = new_device(PHONE)
    page = phone.page
    ready = steps.settle_in(phone, SURGEON)
    steps.ready_for_a_day_without_network(phone)
    phone.cut_network()

    phone.go("/exchange")
    Exchange(page).arrive()
    page.get_by_role("link", name="Old cases from a notebook").click()
    by_notebook(phone, tmp_path)

    patient = operated()
    phone.go(f"/patients/{patient}")
    file = exported(page, tmp_path)
    assert {"Patient", "Encounter", "Observation", "ServiceRequest", "Procedure", "DocumentReference"} <= kinds_in(file)

    phone.go("/exchange/import")
    taking = Import(page)
    taking.arrive()
    taking.choose(file)
    here = [record for record in DEMO["records"] if record["patient"] == patient]
    expect(taking.count("are here already")).to_have_text(str(len(here)))
    expect(taking.count("cannot be taken")).to_have_count(0)
    expect(taking.foot).to_have_count(0)
    steps.expect_waiting(taking, 2)

    phone.reconnect()
    phone.go("/patients")
    ready.arrive()
    expect(ready.storage_line).to_contain_text("Sent", timeout=LIMIT_MS)
    (notebook,) = [record for record in server.ledger() if record.kind == "notebook"]
    taken_back = {record.body["record_id"] for record in server.ledger() if record.kind == "retraction"}
    assert notebook.id in taken_back
