"""Visits after the operation."""

from playwright.sync_api import expect

from tests.journeys.browser.device import Device
from tests.journeys.screens.case import Case
from tests.journeys.screens.follow_up import Course, Visit, Visits
from tests.journeys.screens.measure import Measure
from tests.journeys.walk.visitor import Visitor


def follow_up(device: Device, visit: Visitor) -> None:
    """On the evening of the operation: none of the planned visits, so that it gets a name."""
    page = device.page
    Case(page).step("Record a visit")
    seen = Visit(page)
    seen.arrive()
    page.get_by_label("What it is called").fill("Evening")
    seen.look_for_infection("fever, yes")
    visit("visit", page)
    seen.step("Measure")
    measure = Measure(page)
    measure.arrive()
    visit("visit, measuring", page)
    measure.begin()
    measure.read("exo", 25)
    measure.done()
    measure.save()
    seen.arrive()
    expect(page.get_by_text("Overcorrected by 25").first).to_be_visible()
    seen.plan_anew("The ferry goes on Mondays.")
    visit("visit, planned anew", page)
    seen.measured.get_by_role("link", name="Correct or add").click()
    measure.arrive()
    visit("visit, to correct what was measured", page)
    measure.back()
    seen.arrive()
    expect(seen.foot.get_by_text("The engine has not looked at it yet.")).to_have_count(0)
    seen.step("Save the visit")
    course = Course(page)
    course.arrive()
    expect(course.line("Evening")).to_be_visible()
    visit("course", page)
    device.go("/visits")
    visits = Visits(page)
    visits.arrive()
    expect(visits.group("Must not wait")).to_be_visible()
    visit("visits", page)
