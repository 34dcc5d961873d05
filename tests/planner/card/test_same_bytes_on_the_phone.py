"""Every card of the demo clinic, drawn by the engine that the phone downloads, has the bytes that the server draws."""

import base64
import json

import pytest

from clinic.build.folders import folders
from clinic.build.node import run_node
from fixtures.demo.make import PATH
from planner import desk

RECORDS = json.loads(PATH.read_text(encoding="utf-8"))["records"]
BY_ID = {record["id"]: record for record in RECORDS}


def request_of(signature):
    plan = BY_ID[signature["body"]["plan_id"]]
    patient = BY_ID[plan["body"]["patient_id"]]
    pieces = {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]}
    return json.dumps({"ask": "card_pdf", **pieces})


@pytest.mark.node
def test_the_phone_draws_the_same_bytes(built, tmp_path):
    requests = [request_of(record) for record in RECORDS if record["kind"] == "signature"]
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
    assert all(base64.b64decode(json.loads(each)["answer"]["pdf"]).startswith(b"%PDF") for each in answers)
    assert len(answers) >= 6
