"""Set-up sheets, a list, a packing list and an audit: the phone's engine draws what the server draws."""

import base64
import json

import pytest

from clinic.build.folders import folders
from clinic.build.node import run_node
from fixtures.demo.make import PATH
from planner import desk
from tests.planner.audit.generated import results

RECORDS = json.loads(PATH.read_text(encoding="utf-8"))["records"]
BY_ID = {record["id"]: record for record in RECORDS}
WISHES = {"adjustable": True, "avoid_general": True, "block_at": "2026-12-01T13:30:00+01:00"}


def ask(name, **fields):
    return json.dumps({"ask": name, **fields})


def lines():
    """Plan and pieces of every signature."""
    for signature in RECORDS:
        if signature["kind"] == "signature":
            plan = BY_ID[signature["body"]["plan_id"]]
            patient = BY_ID[plan["body"]["patient_id"]]
            yield plan, {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]}


def requests():
    signed = list(lines())
    entries = [{"patient_id": plan["patient"], "plan_id": plan["id"], "duration_min": 45} for plan, _ in signed]
    listed = {"schema": 1, "on": "2026-12-01", "team": "Harbour team", "entries": entries}
    day = {"list": listed, "held": [pieces for _, pieces in signed]}
    needs = json.loads(desk.answer(ask("day_list", **day)))["answer"]["needs"]
    days = {"days": [{"on": "2026-12-01", "team": "Harbour team", "cases": needs}]}
    sheets = [pieces | {"on": "2026-12-01", "wishes": WISHES} for _, pieces in signed]
    return [
        *(ask(name, **sheet) for sheet in sheets[:3] for name in ("set_up", "set_up_pdf")),
        *(ask(name, **day) for name in ("day_list", "day_list_pdf")),
        *(ask(name, **days) for name in ("packing", "packing_pdf")),
        ask("practice_form"),
        *audits(),
    ]


def audits():
    """All of them of more cases than are drawn one by one."""
    found = results(300)
    cases = [{"result": each, "person": place, "born_on": "2019-02-28"} for place, each in enumerate(found)]
    return [
        *(ask(name, results=found, by="all", on="2026-11-25") for name in ("audit", "audit_pdf")),
        ask("audit_export", cases=cases, shifts_days=[40 + place for place in range(300)]),
    ]


@pytest.mark.node
def test_the_phone_says_and_draws_the_same(built, tmp_path):
    asked = requests()
    (tmp_path / "requests.json").write_text(json.dumps(asked), encoding="utf-8")
    place = {name: folders().site / urls[-1].lstrip("/") for name, urls in built.engine.items()}

    printed = run_node(
        "tests/planner/card/phone.mjs",
        str(place["runtime"].parent),
        str(place["planner"]),
        str(place["pdf"]),
        str(tmp_path / "requests.json"),
        folder=folders().project,
    )
    answers = [json.loads(each) for each in json.loads(printed.splitlines()[-1])]

    assert answers == [json.loads(desk.answer(each)) for each in asked]
    pages = [each["answer"]["pdf"] for each in answers if "pdf" in each["answer"]]
    assert len(pages) == 6
    assert all(base64.b64decode(page).startswith(b"%PDF") for page in pages)
