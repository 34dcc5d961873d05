"""Last year's notebook comes in whole or not at all and goes in one step; a case leaves as FHIR and is known again.

What another program's file holds is taken, and taken back where it was the wrong one.
"""

import json

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.case import Case
from tests.journeys.screens.exchanging import Exchange, Export, Import, Imported, Notebook, TakenBack
from tests.journeys.screens.patients import Patients
from tests.planner.exchange.fhir.test_foreign import PATIENT, bundle, observation


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
    expect(page.get_by_text("Row 3, before_distance_pd")).to_be_visible()
    expect(page.get_by_text("This does not say whether it is eso or exo.")).to_be_visible()
    expect(notebook.foot).to_have_count(0)

    right = tmp_path / "last-year.csv"
    right.write_text("\n".join((names, example, example.replace("17-2025", "18-2025"))))
    notebook.choose(right)
    expect(notebook.foot).to_contain_text("Carry over 2 cases")
    notebook.step("Carry over 2 cases")
    expect(notebook.carried_over).to_contain_text("last-year.csv")
    phone.go("/own-results")
    expect(page.get_by_role("heading", name="Recess both MR")).to_be_visible()
    phone.go("/notebook")
    notebook.arrive()
    notebook.choose(right)
    expect(page.get_by_text("Nothing in it is new.")).to_be_visible()
    notebook.undo("It was the wrong year.")
    expect(notebook.carried_over).to_contain_text("Nothing yet.")


def exported(page, tmp_path):
    Case(page).arrive()
    page.get_by_role("link", name="Export as FHIR").click()
    giving = Export(page)
    giving.arrive()
    giving.make()
    return giving.save(tmp_path)


def kinds_in(file):
    return {entry["resource"]["resourceType"] for entry in json.loads(file.read_text(encoding="utf-8"))["entry"]}


def foreign_file(folder, number, given):
    """A patient with one reading, as another program wrote it."""
    name = {"name": [{"family": "Vrell", "given": [given]}], "identifier": [{"value": f"OI-{number}"}]}
    person = PATIENT | name | {"id": f"pat-{number}"}
    reading = observation(number, "exo", 30) | {"subject": {"reference": f"Patient/pat-{number}"}}
    path = folder / f"{given}.json"
    path.write_text(json.dumps(bundle(person, reading)), encoding="utf-8")
    return path


def taken(phone, file):
    """What the file holds is shown, then saved."""
    phone.go("/exchange/import")
    taking = Import(phone.page)
    taking.arrive()
    taking.choose(file)
    expect(taking.count("would be taken")).to_have_text("2")
    taking.step("Take 2 records")
    imported = Imported(phone.page)
    imported.arrive()
    expect(phone.page.get_by_text("2 records saved on this device.")).to_be_visible()
    return imported


def by_foreign_files(phone, tmp_path):
    """One person is to stay, the other was a mistake."""
    page, patients = phone.page, Patients(phone.page)
    taken(phone, foreign_file(tmp_path, 1, "Ana")).step("See the patients")
    patients.arrive()
    patients.open("Ana Vrell")
    Case(page).arrive()
    expect(page.get_by_role("article", name="Examination of 4 May 2026")).to_contain_text("exo 30")

    taken(phone, foreign_file(tmp_path, 2, "Bruno")).undo()
    undone = TakenBack(page)
    undone.arrive()
    expect(page.get_by_text("What was imported no longer counts.")).to_be_visible()
    undone.step("See the patients")
    patients.arrive()
    expect(patients.entry("Ana Vrell")).to_have_count(1)
    expect(patients.entry("Bruno Vrell")).to_have_count(0)


def test_a_notebook_and_a_case_by_file_without_a_network(settled, shared_server, tmp_path):
    phone, server = settled(SURGEON), shared_server
    page = phone.page
    ready = Patients(page)
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
    by_foreign_files(phone, tmp_path)
    steps.expect_waiting(ready, 2 + 4 + 2)

    phone.reconnect()
    phone.go("/patients")
    ready.arrive()
    expect(ready.storage_line).to_contain_text("Sent")
    (notebook,) = [record for record in server.ledger() if record.kind == "notebook"]
    taken_back = {record.body["record_id"] for record in server.ledger() if record.kind == "retraction"}
    brought = {
        record.body["full_name"]: {record.id, *(each.id for each in server.ledger() if each.patient == record.id)}
        for record in server.ledger()
        if record.kind == "patient" and record.body["full_name"].endswith(" Vrell")
    }
    assert notebook.id in taken_back
    assert taken_back.isdisjoint(brought["Ana Vrell"])
    assert {each.kind for each in server.ledger() if each.id in brought["Bruno Vrell"] & taken_back} == {
        "patient",
        "examination",
    }
