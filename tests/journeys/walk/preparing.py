"""Lists, set-up, packing, what is usual here, and the results."""

from playwright.sync_api import expect

from tests.journeys.browser.device import Device
from tests.journeys.screens.operating_lists import DayList, Lists, Packing
from tests.journeys.screens.results import Results
from tests.journeys.screens.set_up import SetUp
from tests.journeys.walk.visitor import SOMEBODY, Visitor


def preparing(device: Device, visit: Visitor) -> None:
    page = device.go("/lists")
    Lists(page).arrive()
    visit("lists, before one is made", page)
    Lists(page).step("New list")
    day = DayList(page)
    day.arrive()
    day.day(on="2099-01-12", team="Harbour team", place="Orrimar")
    page.get_by_role("button", name="Add an operation").click()
    visit("list, add an operation", page)
    page.get_by_role("button", name="Close").click()
    day.add(SOMEBODY.full_name)
    day.save()
    visit("list", page)
    page.get_by_role("main").get_by_role("link", name="Set-up").click()
    sheet = SetUp(page)
    sheet.arrive()
    sheet.item("Needle for sclera").get_by_text("Other ways").click()
    visit("set-up", page)
    sheet.begin_own_choice("Magnification").get_by_role("radio", name="Operating microscope").check(force=True)
    visit("set-up, another way", page)
    page.get_by_role("button", name="Close").click()
    device.go("/lists")
    visit("lists", page)
    Lists(page).step("What to pack")
    Packing(page).arrive()
    Packing(page).only("Harbour team")
    expect(page.get_by_text("Kit for 1 operation")).to_be_visible()
    visit("what to pack", page)
    device.go("/practice")
    expect(page.get_by_text("What is usual here")).to_be_visible()
    visit("this clinic's practice", page)
    page.get_by_role("button", name="Set this clinic's own").click()
    visit("this clinic's own visits", page)
    device.go("/results")
    Results(page).counted()
    visit("results", page)
    Results(page).step("CSV without names")
    expect(page.get_by_role("dialog").get_by_text("left out.").first).to_be_visible()
    visit("results, a file without names", page)
    page.get_by_role("button", name="Close").click()
    device.go("/own-results")
    expect(page.get_by_role("checkbox", name="Show beside the table's dose").first).to_be_visible()
    visit("own results", page)
