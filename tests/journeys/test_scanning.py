"""A card on paper opens on a tablet without a network, which says what it knows of it; a foreign code opens nothing."""

import base64
import io
import json

from playwright.sync_api import expect

from planner import desk
from tests.journeys import steps
from tests.journeys.browser.device import TABLET
from tests.journeys.browser.paper import code_on, film_of
from tests.journeys.people import DEMO, SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.case import Case
from tests.journeys.screens.doors import Unlock
from tests.journeys.screens.patients import Patients
from tests.journeys.screens.scan import Scan
from tests.journeys.site.post import card_as

BY_ID = {record["id"]: record for record in DEMO["records"]}
SIGNED = "Katla Dravecki"
NAME = "Ragna Tveit"
"""Signed as :data:`SIGNED` is."""


def signature_of(name):
    patient = next(each["patient"] for each in DEMO["records"] if each["body"].get("full_name") == name)
    return next(each for each in DEMO["records"] if each["kind"] == "signature" and each["patient"] == patient)


def foreign_paper(signature):
    """The same card as another clinic, with another key, would print it."""
    plan = BY_ID[signature["body"]["plan_id"]]
    pieces = {
        "patient": BY_ID[plan["body"]["patient_id"]]["body"],
        "plan": plan["body"],
        "signature": signature["body"],
        "card_key": "9c" * 32,
    }
    said = json.loads(desk.answer(json.dumps({"ask": "card_pdf", **pieces})))
    return base64.b64decode(said["answer"]["pdf"])


def png_of(paper):
    data = io.BytesIO()
    paper.save(data, "PNG")
    return data.getvalue()


def test_paper_opens_its_card_without_a_network_and_says_when_it_was_taken_back(
    sign_anew, lasting, shared_server, playwright, film
):
    """The page is the clinic's own; the tablet's camera looks at it."""
    *_, signature = sign_anew(SIGNED, full_name=NAME)
    word = signature["body"]["check_word"]
    page = card_as(SURGEON, shared_server, playwright.request.new_context(), signature["id"])
    film_of(code_on(page), film)
    tablet = lasting(SURGEON, TABLET)
    steps.ready_for_a_day_without_network(tablet)
    tablet.cut_network()
    shared_server.stop()
    page = tablet.go()
    Unlock(page).enter()
    Patients(page).scan()
    scan = Scan(page)

    scan.found("The same as on this device.")
    expect(scan.banner).to_contain_text(NAME)
    expect(scan.face).to_contain_text("lateral rectus")
    expect(scan.face).not_to_contain_text("not in the code")
    expect(page.get_by_text(word).first).to_be_visible()

    page.get_by_role("link", name="Open the card on this device").click()
    card = Card(page)
    card.arrive()
    assert card.check_word == word
    card.back()
    Case(page).take_back_the_signature("Another day.")
    tablet.go("/scan")
    scan.found("TAKEN BACK.")
    expect(page.get_by_text("Do not operate by this card.")).to_be_visible()
    expect(scan.face).to_contain_text("are not in the code: read them on the paper.")

    scan.again()
    scan.found("TAKEN BACK.")
    tablet.go("/patients")
    Patients(page).arrive()


def test_a_foreign_code_opens_nothing(settled):
    device = settled(SURGEON)
    device.context.grant_permissions([])
    page = device.go("/scan")
    scan = Scan(page)
    scan.arrive()
    scan.choose_picture("foreign.png", png_of(code_on(foreign_paper(signature_of(SIGNED)))))

    scan.found("The code was sealed with a key that this device does not have")
    expect(scan.face).to_have_count(0)
    device.context.clear_permissions()
