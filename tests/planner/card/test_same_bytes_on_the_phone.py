"""Every card of the demo clinic, drawn and coded by the engine that the phone downloads, has the server's bytes."""

import base64
import json

import pytest

from clinic.build.folders import folders
from clinic.build.node import run_node
from fixtures.demo.make import PATH
from planner import desk

RECORDS = json.loads(PATH.read_text(encoding="utf-8"))["records"]
KEY = "7e" * 32
BY_ID = {record["id"]: record for record in RECORDS}


def pieces_of(signature):
    plan = BY_ID[signature["body"]["plan_id"]]
    patient = BY_ID[plan["body"]["patient_id"]]
    return {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"], "card_key": KEY}


PRACTICE = {
    "schema": 1,
    "decided_by": "Dr Ilva Tennholt",
    "reason": "What the store holds.",
    "choices": [{"item": "suture", "choice": "monofilament_absorbed"}],
}


def prepared(pieces):
    """The same card of a person who was entered twice, in a clinic with a suture of its own."""
    other = pieces["patient"] | {"hospital_number": "OI-0777", "allergies": "Iodine"}
    return pieces | {"other_entries": [other], "practice": PRACTICE}


def reading_of(pieces):
    code = json.loads(desk.answer(json.dumps({"ask": "card_code", **pieces})))["answer"]["code"]
    return {"ask": "read_card_code", "text": code, "card_keys": [KEY]}


@pytest.mark.node
def test_the_phone_draws_codes_and_reads_the_same_bytes(built, tmp_path):
    cards = [pieces_of(record) for record in RECORDS if record["kind"] == "signature"]
    requests = [json.dumps({"ask": "card_pdf", **pieces}) for pieces in [*cards, prepared(cards[0])]]
    requests += [json.dumps({"ask": "card_code", **pieces}) for pieces in cards]
    requests += [json.dumps(reading_of(pieces)) for pieces in cards]
    (tmp_path / "requests.json").write_text(json.dumps(requests), encoding="utf-8")
    place = {name: folders().site / urls[-1].lstrip("/") for name, urls in built.engine.items()}

    printed = run_node(
        "tests/planner/card/phone.mjs",
        str(place["runtime"].parent),
        str(place["planner"]),
        str(place["pdf"]),
        str(tmp_path / "requests.json"),
        folder=folders().project,
    )
    answers = json.loads(printed.splitlines()[-1])

    assert answers == [desk.answer(request) for request in requests]
    pages = [json.loads(each)["answer"]["pdf"] for each in answers[: len(cards) + 1]]
    assert len(set(pages)) == len(cards) + 1
    assert all(base64.b64decode(page).startswith(b"%PDF") for page in pages)
    assert len(pages) >= 6
    assert all("answer" in json.loads(each) for each in answers)
