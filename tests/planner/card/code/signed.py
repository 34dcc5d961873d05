"""The demo clinic's signed cards, as the pieces that a code is made of."""

import json

from fixtures.demo.make import PATH
from planner.desk.asks.pieces import pieces_of

RECORDS = json.loads(PATH.read_text(encoding="utf-8"))["records"]
BY_ID = {record["id"]: record for record in RECORDS}

KEY = "5a" * 32
OTHER_KEY = "c3" * 32


def bodies_of(signature):
    plan = BY_ID[signature["body"]["plan_id"]]
    patient = BY_ID[plan["body"]["patient_id"]]
    return {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]}


SIGNED = {
    record["body"]["check_word"]: pieces_of(bodies_of(record)) for record in RECORDS if record["kind"] == "signature"
}
