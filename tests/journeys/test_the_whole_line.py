"""From the door to the card with a network: every step of the line, on a phone."""

import io
import re

import pypdf
from playwright.sync_api import expect

from tests.journeys import steps
from tests.journeys.people import SURGEON
from tests.journeys.screens.card import Card
from tests.journeys.screens.options import Options, mm
from tests.journeys.screens.patient_form import Details
from tests.journeys.screens.signing import Signing

PATIENT = Details(full_name="Hedda Ruskin", born=("4", "9", "2019"), hospital_number="OI-0501", allergies="latex")
RIGHT, LEFT = (f"{eye}, medial rectus" for eye in steps.EYES)


def test_a_surgeon_measures_weighs_signs_and_hands_over_a_card(settled, shared_server):
    phone = settled(SURGEON)
    page = phone.page
    before = len(shared_server.ledger())

    steps.enter_patient(page, PATIENT)
    findings = steps.measure_esotropia(page)
    expect(findings.banner).to_contain_text(PATIENT.full_name)
    expect(findings.banner).to_contain_text(PATIENT.hospital_number)
    expect(page.get_by_role("main")).to_contain_text(re.compile(r"Esodeviation 40\s*Δ at distance"))

    findings.to_options()
    options = Options(page)
    options.arrive()
    option = options.open(steps.BOTH_MEDIAL)
    right = option.dose(RIGHT)
    expect(right).to_contain_text(mm(5.5))
    option.half_more(RIGHT)
    option.half_more(RIGHT)
    expect(right).to_contain_text(re.compile(r"table 5\.5\s*mm"))
    expect(right).to_contain_text(re.compile(r"surgeon 6\.5\s*mm"))
    expect(option.dose(LEFT)).not_to_contain_text("surgeon")
    option.choose()

    signing = Signing(page)
    assert signing.read_cautions() == 1, "6.5 mm is above the usual maximum"
    signing.draw("LEFT eye", "medial rectus", "recess")
    signing.draw("LEFT eye", "lateral rectus", "resect")
    signing.compare()
    expect(signing.only_in("Your drawing").get_by_role("listitem")).to_have_text(["LEFT eye, lateral rectus: resect"])
    expect(signing.only_in("The plan").get_by_role("listitem")).to_have_text(["RIGHT eye, medial rectus: recess"])
    expect(signing.foot.get_by_role("button", name="Sign", exact=True)).to_have_count(0)

    signing.draw_again()
    steps.draw_both_medial(signing)
    signing.sign()

    card = Card(page)
    card.arrive()
    expect_the_card_to_say_it_all(card)
    steps.expect_sent(card)
    received = shared_server.ledger()[before:]
    assert [record.kind for record in received] == ["patient", "examination", "plan", "signature"]
    assert {record.patient for record in received} == {received[0].id}
    assert {record.author for record in received} == {SURGEON.username}
    signature = received[-1]
    assert card.check_word == signature.body["check_word"]

    pdf = card.keep_pdf()
    assert pdf == phone.served_card(signature.id)
    (sheet,) = pypdf.PdfReader(io.BytesIO(pdf)).pages
    text = sheet.extract_text()
    for words in (PATIENT.full_name, PATIENT.hospital_number, "RIGHT EYE", "LEFT EYE", "6.5 mm", card.check_word):
        assert words in text


def expect_the_card_to_say_it_all(card: Card) -> None:
    right_line, left_line = card.lines.all()
    for line, eye, figures in ((right_line, "RIGHT EYE", (6.5, 12.0)), (left_line, "LEFT EYE", (5.5, 11.0))):
        expect(line).to_contain_text(eye)
        expect(line).to_contain_text("medial rectus")
        expect(line).to_contain_text("recess")
        for figure in figures:
            expect(line).to_contain_text(mm(figure))
    for words in ("latex", "above the usual maximum", SURGEON.full_name, "Wright, after Parks", "engine"):
        expect(card.face).to_contain_text(words)
