"""The screens beside the line."""

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import Device
from tests.journeys.people import DEMO
from tests.journeys.screens.devices import Devices
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.same_person import SamePerson
from tests.journeys.screens.scan import Scan
from tests.journeys.screens.settings import Settings
from tests.journeys.screens.status import Status
from tests.journeys.walk.exchanging import by_file
from tests.journeys.walk.visitor import SOMEBODY, Visitor


def around(device: Device, visit: Visitor) -> None:
    device.go("/scan")
    Scan(device.page).arrive()
    visit("scan a card", device.page)
    device.go("/settings")
    Settings(device.page).arrive()
    visit("settings", device.page)
    one, other, *_ = (record["id"] for record in DEMO["records"] if record["kind"] == "patient")
    device.go(f"/patients/{one}/same/{other}")
    SamePerson(device.page).arrive()
    visit("one person, entered twice?", device.page)
    device.go("/devices")
    devices = Devices(device.page)
    devices.arrive()
    expect(devices.in_hand).to_be_visible()
    visit("your devices", device.page)
    devices.ask_to_revoke(devices.in_hand)
    visit("your devices, to revoke", device.page)
    device.page.get_by_role("dialog").get_by_role("button", name="Keep it").click()
    device.cut_network()
    device.go("/patients")
    Patients(device.page).arrive()
    steps.enter_patient(device.page, SOMEBODY)
    patient = device.page.url.rpartition("/")[2]
    device.go("/status")
    Status(device.page).arrive()
    visit("where the work is, something waits", device.page)
    by_file(device, visit, patient)
    device.go("/patients/not-here")
    expect(device.page.get_by_text("This patient is not on this phone")).to_be_visible()
    visit("a patient who is not here", device.page)
    device.go("/nowhere")
    expect(device.page.get_by_text("There is nothing here")).to_be_visible()
    visit("an address that leads nowhere", device.page)
