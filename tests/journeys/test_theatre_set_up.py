"""The surgeon prepares theatre for a plan; the theatre's tablet reads it, offline too, and no stop can be passed."""

import re

from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.people import SURGEON, THEATRE
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.set_up import SetUp

LIKE = "Sefa Lindqvarn"
"""An adult of the demo clinic; one eye is planned and signed."""
NAME = "Aslaug Verhoeven"


def test_what_the_surgeon_prepares_is_read_in_a_theatre_without_a_network(settled, sign_anew):
    sign_anew(LIKE, full_name=NAME)
    surgeon = settled(SURGEON, TABLET)
    Patients(surgeon.page).open(NAME)
    Case(surgeon.page).arrive()
    surgeon.page.get_by_role("link", name="Set-up").first.click()
    sheet = SetUp(surgeon.page)
    sheet.arrive()
    expect(sheet.item("Anaesthesia")).to_contain_text("General anaesthesia")

    sheet.wish("Is a suture to be adjusted?", "Yes")
    sheet.wish("Is general anaesthesia to be avoided?", "Yes")
    sheet.block_at("13:30")
    expect(sheet.item("Anaesthesia")).to_contain_text("one eye of an adult can be blocked")
    expect(surgeon.page.get_by_text(re.compile("19:30 at the earliest")).first).to_be_visible()

    panel = sheet.begin_own_choice("Needle for sclera")
    expect(panel.get_by_role("radio")).to_have_count(2)
    expect(panel).not_to_contain_text("utting")
    panel.get_by_role("button", name="Close").click()
    sheet.item("Needle for sclera").get_by_text("Other ways").click()
    expect(sheet.item("Needle for sclera").get_by_role("alert")).to_have_count(2)

    sheet.choose("Magnification", "Operating microscope", "The loupe is away for repair.")
    expect(sheet.item("Magnification")).to_contain_text("Reason: The loupe is away for repair.")
    sheet.save()
    steps.expect_sent(sheet)

    theatre = settled(THEATRE, TABLET)
    steps.ready_for_a_day_without_network(theatre)
    theatre.cut_network()
    page = theatre.go()
    Unlock(page).enter()
    Patients(page).open(NAME)
    Case(page).arrive()
    page.get_by_role("link", name="Set-up").first.click()
    read = SetUp(page)
    read.arrive()
    expect(read.item("Magnification")).to_contain_text("Reason: The loupe is away for repair.")
    expect(page.get_by_text(re.compile("19:30 at the earliest")).first).to_be_visible()
    expect(page.get_by_role("button", name="Choose another way")).to_have_count(0)
