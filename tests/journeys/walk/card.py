"""The card of the signed plan, its checks, and the record of the operation."""

import re

from playwright.sync_api import Page, expect

from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.counselling import Counselling
from tests.journeys.screens.measure import Measure
from tests.journeys.screens.operation import Note, Recording
from tests.journeys.screens.theatre_check import FIRST, SECOND, TheatreCheck
from tests.journeys.walk.visitor import SOMEBODY, Visitor


def checks(page: Page, visit: Visitor) -> None:
    """From the card as far as a stop, and back to the card."""
    card = Card(page)
    card.arrive()
    word = card.check_word
    page.get_by_role("link", name=re.compile("^Checks")).click()
    checks = TheatreCheck(page)
    checks.arrive()
    visit("checks", page)
    checks.step("Begin the sign in")
    checks.at("Who leads through this check?")
    visit("checks, who leads", page)
    checks.name("Who leads through this check?", *FIRST)
    checks.name("Who is the second person?", *SECOND)
    checks.at("The wristband")
    visit("checks, wristband", page)
    day, month, year = SOMEBODY.born
    checks.wristband(SOMEBODY.hospital_number, f"{year}-{month}-{day}")
    checks.at("The paper card")
    visit("checks, paper", page)
    checks.paper("The paper card", word)
    checks.at("The consent")
    page.get_by_role("button", name=re.compile("^RIGHT eye, medial rectus: ")).click()
    visit("checks, consent", page)
    checks.consent("The consent", (("left", "MR", "recess"), ("right", "MR", "recess")))
    checks.mark("Both eyes")
    checks.at("Machine and drugs")
    visit("checks, an answer", page)
    checks.answer("Machine and drugs", "Not checked")
    checks.at("Sign in stopped")
    visit("checks, stopped", page)
    checks.step("To the checks")
    checks.arrive()
    visit("checks, after a stop", page)
    checks.back()


def card(page: Page, visit: Visitor) -> None:
    card = Card(page)
    card.arrive()
    visit("card, dark", page)
    card.step("Light")
    visit("card, light", page)
    card.step("Dark")
    card.open_pdf()
    visit("card, PDF", page)
    page.get_by_role("button", name="Close").click()
    card.back()
    Case(page).arrive()
    visit("case, signed", page)
    page.get_by_role("link", name="For the patient").first.click()
    counselling = Counselling(page)
    counselling.arrive()
    counselling.read_in("العربيّة", "ar")
    visit("for the patient, in Arabic", page)
    counselling.back()
    Case(page).arrive()
    page.get_by_role("button", name="Take back").first.click()
    visit("case, take back", page)
    page.get_by_role("dialog").get_by_role("button", name="Keep it").click()
    Case(page).correct_examination()
    Measure(page).arrive()
    visit("correct or add", page)


def operation(page: Page, visit: Visitor) -> None:
    page.get_by_role("banner").get_by_text("Back", exact=True).click()
    Case(page).arrive()
    page.get_by_role("link", name="Record the operation").click()
    record = Recording(page)
    record.at("RIGHT eye, medial rectus")
    record.unfold("Found on this muscle")
    record.unfold("Suture and needle")
    record.choose("The suture is", "adjustable")
    visit("operation, all unfolded", page)
    record.as_planned()
    record.at("LEFT eye, medial rectus")
    record.something_else()
    visit("operation, changed", page)
    page.get_by_role("button", name="It was done as planned").click()
    record.complication("lost muscle")
    visit("operation, complication", page)
    record.step("Go on")
    record.now("Suture tied")
    expect(page.get_by_role("region", name="Adjustable suture", exact=True)).to_be_visible()
    visit("operation, times", page)
    record.step("Go on")
    record.at("Check and save")
    visit("operation, check", page)
    record.step("Save the record")
    note = Note(page)
    note.arrive()
    visit("operation note", page)
    page.get_by_role("link", name="Record the adjustment").click()
    expect(page.get_by_role("heading", level=1, name="Adjust the suture")).to_be_visible()
    record.choose("The suture was", "tightened")
    visit("adjustment", page)
    note.back()
    note.arrive()
    note.back()
    Case(page).arrive()
