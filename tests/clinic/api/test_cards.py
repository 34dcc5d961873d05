"""The card of a signed plan, and of nothing else."""

import base64
import io
import json

import pytest
from pypdf import PdfReader

from clinic.people.card_keys import card_keys
from planner import desk


@pytest.fixture
def line(cast):
    records = cast.surgeon.pen.line()
    cast.surgeon.accepted(*records)
    return records


def card(person, signature, clinic=None):
    return person.client.get(f"/api/v1/clinics/{(clinic or person.clinic).pk}/cards/{signature['id']}.pdf")


def code(response):
    return response.json()["errors"][0]["code"]


def test_the_card_has_the_bytes_that_the_phone_makes(cast, line):
    patient, _, plan, signature = line
    pieces = {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]}
    pieces["card_key"] = card_keys(cast.clinic.pk)[0]
    said = json.loads(desk.answer(json.dumps({"ask": "card_pdf", **pieces})))["answer"]["pdf"]

    response = card(cast.theatre_nurse, signature)

    assert (response.status_code, response.headers["Content-Type"]) == (200, "application/pdf")
    assert response.content == base64.b64decode(said)


def test_the_card_shows_patient_and_check_word_and_its_address_and_name_show_neither(cast, line):
    response = card(cast.surgeon, line[3])
    text = PdfReader(io.BytesIO(response.content)).pages[0].extract_text()

    assert "Ines Ferreira" in text
    assert line[3]["body"]["check_word"] in text
    assert "Ferreira" not in response.headers["Content-Disposition"]
    assert response.headers["Cache-Control"] == "no-store"


def test_a_browser_that_asks_for_a_page_gets_the_pdf(cast, line):
    address = f"/api/v1/clinics/{cast.clinic.pk}/cards/{line[3]['id']}.pdf"
    response = cast.surgeon.client.get(address, headers={"Accept": "text/html"})

    assert response.headers["Content-Type"] == "application/pdf"


def test_the_card_keeps_the_version_of_the_patient_that_the_plan_was_made_for(cast, line):
    before = card(cast.surgeon, line[3]).content
    cast.surgeon.accepted(cast.surgeon.pen.patient_again(line[0], full_name="Somebody Else"))

    assert card(cast.surgeon, line[3]).content == before


def test_an_allergy_that_became_known_after_signing_is_an_alert_on_it(cast, line):
    cast.surgeon.accepted(cast.surgeon.pen.patient_again(line[0], allergies="iodine"))
    text = PdfReader(io.BytesIO(card(cast.surgeon, line[3]).content)).pages[0].extract_text()

    assert "NEWER THAN THE SIGNATURE. Allergies:" in text
    assert "iodine" in text


def test_what_another_entry_of_the_person_warns_of_is_on_it_with_the_bytes_that_the_phone_makes(cast, line):
    pen = cast.surgeon.pen
    twins = [pen.patient(hospital_number=f"OI-{number}", allergies=f"Iodine {number}.") for number in (777, 778)]
    latest = pen.patient_again(twins[1], allergies="Latex and iodine.")
    cast.surgeon.accepted(*twins, latest, pen.join(line[0], twins[0]), pen.join(twins[1], line[0]))
    now = {twins[0]["id"]: twins[0]["body"], twins[1]["id"]: latest["body"]}
    entries = [now[entry] for entry in sorted(now)]
    patient, _, plan, signature = (each["body"] for each in line)
    pieces = {"patient": patient, "plan": plan, "signature": signature, "other_entries": entries}
    asked = {"ask": "card_pdf", **pieces, "card_key": card_keys(cast.clinic.pk)[0]}
    said = json.loads(desk.answer(json.dumps(asked)))["answer"]["pdf"]

    response = card(cast.theatre_nurse, line[3])
    text = PdfReader(io.BytesIO(response.content)).pages[0].extract_text()

    assert response.content == base64.b64decode(said)
    assert text.count("OTHER ENTRY OF THIS PERSON. Allergies:") == len(entries)
    assert "Latex and iodine. Entered as Ines Ferreira, number OI-778." in " ".join(text.split())


def test_the_suture_and_needle_of_the_set_up_are_on_it_with_the_bytes_that_the_phone_makes(cast, line):
    """What is newest of several is taken, as devices do; the surgeon's reason stands on the paper."""
    pen = cast.surgeon.pen
    choice = [{"item": "needle", "choice": "spatula_half", "reason": "A deep orbit with little room."}]
    practice = pen.practice(choices=[{"item": "suture", "choice": "monofilament_absorbed"}])
    earlier, latest = pen.set_up(line[2]), pen.set_up(line[2], overrides=choice)
    earlier["id"], latest["id"] = sorted((earlier["id"], latest["id"]))
    cast.surgeon.accepted(practice, latest, earlier)
    patient, _, plan, signature = (each["body"] for each in line)
    pieces = {"patient": patient, "plan": plan, "signature": signature}
    prepared = {"set_up": latest["body"], "practice": practice["body"]}
    asked = {"ask": "card_pdf", **pieces, **prepared, "card_key": card_keys(cast.clinic.pk)[0]}
    said = json.loads(desk.answer(json.dumps(asked)))["answer"]["pdf"]

    response = card(cast.theatre_nurse, line[3])
    text = " ".join(PdfReader(io.BytesIO(response.content)).pages[0].extract_text().split())

    assert response.content == base64.b64decode(said)
    assert "Single thread, absorbable, 6-0; spatula needle, half a circle, at each end" in text
    assert "Reason: A deep orbit with little room." in text


def test_a_join_that_was_taken_back_leaves_nothing_of_the_other_entry_on_it(cast, line):
    before = card(cast.theatre_nurse, line[3]).content
    twin = cast.surgeon.pen.patient(hospital_number="OI-777", allergies="Iodine.")
    join = cast.surgeon.pen.join(line[0], twin)
    cast.surgeon.accepted(twin, join, cast.surgeon.pen.retraction(join))

    assert card(cast.theatre_nurse, line[3]).content == before


@pytest.mark.parametrize("place", [0, 1, 2], ids=["patient", "examination", "plan"])
def test_there_is_no_card_of_what_is_no_signature(cast, line, place):
    response = card(cast.surgeon, line[place])

    assert (response.status_code, code(response)) == (404, "card_unknown")


def test_there_is_no_card_of_another_clinics_signature(cast):
    records = cast.stranger.pen.line()
    cast.stranger.accepted(*records)
    response = card(cast.surgeon, records[3])

    assert (response.status_code, code(response)) == (404, "card_unknown")


def test_the_card_of_a_replaced_plan_is_refused(cast, line):
    patient, examination, plan, signature = line
    cast.surgeon.accepted(cast.surgeon.pen.plan(patient, examination, place=1, supersedes=plan))
    response = card(cast.theatre_nurse, signature)

    assert (response.status_code, code(response)) == (409, "card_out_of_date")


@pytest.mark.parametrize("place", [2, 3], ids=["plan", "signature"])
def test_the_card_of_what_was_taken_back_is_refused(cast, line, place):
    cast.surgeon.accepted(cast.surgeon.pen.retraction(line[place]))

    assert code(card(cast.surgeon, line[3])) == "card_out_of_date"
