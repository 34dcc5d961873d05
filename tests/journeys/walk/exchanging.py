"""What goes out and comes in: FHIR files, notebooks, and work from device to device."""

from pathlib import Path
from tempfile import TemporaryDirectory

from playwright.sync_api import expect

from tests.journeys.browser.device import Device
from tests.journeys.people import DEMO
from tests.journeys.screens.exchanging import Exchange, Export, Import, Notebook
from tests.journeys.screens.handing import HandOver, TakeOver
from tests.journeys.walk.visitor import Visitor


def exchanging(device: Device, visit: Visitor) -> None:
    page = device.go("/exchange")
    Exchange(page).arrive()
    visit("exchange", page)
    device.go("/exchange/all")
    Export(page).arrive()
    visit("export all", page)
    device.go("/exchange/import")
    Import(page).arrive()
    visit("import", page)
    device.go(f"/patients/{DEMO['records'][0]['patient']}/export")
    export = Export(page)
    export.arrive()
    export.make()
    visit("export a patient, the file is ready", page)
    with TemporaryDirectory() as folder:
        device.go("/notebook")
        notebook = Notebook(page)
        notebook.arrive()
        names, example = notebook.empty_table(Path(folder)).read_text(encoding="utf-8").splitlines()[:2]
        wrong = Path(folder) / "wrong.csv"
        wrong.write_text("\n".join((names, example.replace("35 eso", "35"))))
        notebook.choose(wrong)
        expect(page.get_by_text("Row 2, before_distance_pd")).to_be_visible()
        visit("notebook, a wrong cell", page)


def by_file(device: Device, visit: Visitor, patient: str) -> None:
    giving, taking = HandOver(device.page), TakeOver(device.page)
    with TemporaryDirectory() as folder:
        device.go(f"/hand-over/{patient}")
        giving.arrive()
        visit("hand over, one record", device.page)
        device.go("/hand-over")
        giving.arrive()
        visit("hand over", device.page)
        giving.make()
        visit("hand over, the file", device.page)
        words, file = giving.words, giving.save(Path(folder))
        device.go("/take-over")
        taking.arrive()
        visit("take over", device.page)
        taking.choose(file)
        taking.take("other words than those")
        expect(taking.told).to_contain_text("Nothing was taken over.")
        visit("take over, refused", device.page)
        taking.take(words)
        taking.taken()
        visit("taken over", device.page)
