"""Writes records as a device does: id, envelope and digest made on the spot, plans and signatures by the engine."""

from __future__ import annotations

import json
import secrets
import time
import uuid
from dataclasses import dataclass
from typing import Any

from planner import desk
from planner.canonical import digest

Raw = dict[str, Any]

PATIENT: Raw = {"schema": 1, "full_name": "Ines Ferreira", "born_on": "2019-04-02", "hospital_number": "H-1042"}
EXAMINATION: Raw = {
    "schema": 1,
    "examined_on": "2026-11-20",
    "readings": [
        {"gaze": "primary", "range": "distance", "correction": "with", "horizontal_pd": 40},
        {"gaze": "primary", "range": "near", "correction": "with", "horizontal_pd": 40},
    ],
}
DOSE_TABLE: Raw = {
    "schema": 1,
    "id": "harbour-clinic",
    "name": "Harbour clinic",
    "caution": "Invented figures for the tests.",
    "origin": {
        "mark": "common practice",
        "publication": "the clinic's own figures, kept since 2019",
        "place": "folder in room 3",
        "place_confirmed": True,
        "transcribed_by": "Ilse Marrow",
        "transcribed_on": "2026-11-20",
        "checked_by": "Tomas Quill",
        "validity": "Comitant deviations of 15 to 20 prism dioptres.",
    },
    "esotropia": [{"deviation_pd": 15, "both_recess_mm": 3}, {"deviation_pd": 20, "both_recess_mm": 3.5}],
    "exotropia": [{"deviation_pd": 15, "both_recess_mm": 4}, {"deviation_pd": 20, "both_recess_mm": 5}],
}
CHECK_ITEM: Raw = {
    "schema": 1,
    "phase": "time out",
    "role": "nurse",
    "title": "Bed",
    "aloud": "Is the bed locked?",
    "goes_on": "Locked",
    "stops": "Not locked",
}
NOTEBOOK: Raw = {
    "schema": 1,
    "title": "cases-2025.csv",
    "file_digest": "0" * 64,
    "cases": [
        {
            "row": 2,
            "reference": "17-2025",
            "operated_on": "2025-03-14",
            "diagnosis": "infantile esotropia",
            "family": "recess-both-mr",
            "table": "classic-parks",
            "table_dose_pd": 35,
            "before_pd": 35,
            "seen": [{"days_after": 45, "distance_pd": 2}],
            "operated_before": False,
            "suture_moved": False,
            "complication": False,
            "palsy_or_restriction": False,
        }
    ],
}
PRACTICE: Raw = {
    "schema": 1,
    "decided_by": "Dr Amara Okonjo",
    "reason": "Agreed at the theatre meeting in May.",
    "choices": [{"item": "display", "choice": "tablet"}],
    "figures": [{"name": "adjust_after_block_h", "value": 8}],
}
TABLE = "wright-after-parks"
RECORDED_AT = "2026-11-25T09:30:00+01:00"


def uuid7() -> str:
    """A UUID of version 7 (RFC 9562, section 5.7)."""
    milliseconds = int(time.time() * 1000)
    value = (milliseconds << 80) | (7 << 76) | (secrets.randbits(12) << 64) | (2 << 62) | secrets.randbits(62)
    return str(uuid.UUID(int=value))


def ask(name: str, **fields: Any) -> Any:
    """The desk's answer, as the phone asks for it."""
    said = json.loads(desk.answer(json.dumps({"ask": name, **fields})))
    assert "answer" in said, said
    return said["answer"]


@dataclass(frozen=True)
class Pen:
    """In one person's hand, on one device, in one clinic."""

    clinic: str
    author: str
    full_name: str
    device: str

    def record(self, kind: str, patient: str | None, body: Raw, **envelope: Any) -> Raw:
        """A record; ``envelope`` overrides whatever it names."""
        record_id = uuid7()
        return {
            "id": record_id,
            "kind": kind,
            "clinic": self.clinic,
            "patient": patient or record_id,
            "author": self.author,
            "device": self.device,
            "recorded_at": RECORDED_AT,
            "supersedes": [],
            "body": body,
            "digest": digest(body),
        } | envelope

    def patient(self, **body: Any) -> Raw:
        """A new patient."""
        return self.record("patient", None, PATIENT | body)

    def patient_again(self, first: Raw, *, supersedes: Raw | None = None, **body: Any) -> Raw:
        """A later version of a patient's record."""
        older = supersedes or first
        return self.record("patient", first["patient"], older["body"] | body, supersedes=[older["id"]])

    def examination(self, patient: Raw, **body: Any) -> Raw:
        """An examination: esotropia of 40 prism dioptres unless said otherwise."""
        return self.record("examination", patient["patient"], EXAMINATION | body)

    def plan(self, patient: Raw, examination: Raw, *, place: int = 0, supersedes: Raw | None = None) -> Raw:
        """The engine's plan for the option at ``place``, best first."""
        case = {"schema": 1, "examination": examination["body"], "table": TABLE, "born_on": patient["body"]["born_on"]}
        options = [
            option
            for option in ask("propose", case=case)["options"]
            if not any(notice["level"] == "stop" for notice in option["notices"])
        ]
        body = ask(
            "draft_plan",
            case=case,
            option=options[place]["id"],
            patient_id=patient["id"],
            patient_digest=patient["digest"],
            examination_id=examination["id"],
            examination_digest=examination["digest"],
            note="",
        )
        return self.record("plan", patient["patient"], body, supersedes=[supersedes["id"]] if supersedes else [])

    def signature(self, plan: Raw, **body: Any) -> Raw:
        """The signature under a plan: drawn as planned, every caution acknowledged."""
        option = plan["body"]["option"]
        signed = ask(
            "sign",
            plan=plan["body"],
            plan_id=plan["id"],
            drawn=[{name: dose[name] for name in ("eye", "muscle", "operation")} for dose in option["doses"]],
            acknowledged=[notice["code"] for notice in option["notices"] if notice["level"] == "caution"],
            signer_name=self.full_name,
            signed_at=RECORDED_AT,
        )
        return self.record("signature", plan["patient"], signed | body)

    def retraction(self, target: Raw, reason: str = "Entered for the wrong patient.") -> Raw:
        """A record taken back."""
        body = {"schema": 1, "record_id": target["id"], "reason": reason}
        return self.record("retraction", target["patient"], body)

    def join(self, one: Raw, other: Raw, reason: str = "Entered twice.") -> Raw:
        """Two patients said to be one person."""
        body = {"schema": 1, "patient_a": one["patient"], "patient_b": other["patient"], "reason": reason}
        return self.record("join", one["patient"], body)

    def dose_table(self, **body: Any) -> Raw:
        """A clinic's own table, two rows each way."""
        return self.record("dose_table", None, DOSE_TABLE | body)

    def dose_table_again(self, first: Raw, **body: Any) -> Raw:
        """A later version of it."""
        return self.record("dose_table", first["patient"], first["body"] | body, supersedes=[first["id"]])

    def stopped_check(self, line: list[Raw]) -> Raw:
        """A check in theatre that the card itself stopped."""
        patient, _, plan, signature = line
        pieces = {"patient": patient["body"], "plan": plan["body"], "signature": signature["body"]}
        check = {**pieces, "card": "replaced", "phase": "sign in"}
        body = ask("close_check", round=check, signature_id=signature["id"], closed_at=RECORDED_AT)
        return self.record("theatre_check", patient["patient"], body)

    def check_item(self, **body: Any) -> Raw:
        """A question that the clinic adds to the time out."""
        return self.record("check_item", None, CHECK_ITEM | body)

    def operation(self, line: list[Raw], **body: Any) -> Raw:
        """What was done by a signed plan, as planned, with an adjustable suture on the first muscle."""
        _, _, plan, signature = line
        begun = {"plan": plan["body"], "signature": signature["body"], "signature_id": signature["id"]}
        who = {"operated_on": "2026-11-25", "surgeon_name": self.full_name}
        done = ask("draft_operation", **begun, **who)["operation"]
        done["muscles"][0]["adjustable"] = True
        done |= {"tied_at": RECORDED_AT, "block_at": RECORDED_AT}
        reviewed = ask("review_operation", plan=plan["body"], signature=signature["body"], operation=done)
        return self.record("operation", plan["patient"], done | {"window": reviewed["window"]} | body)

    def adjustment(self, operation: Raw, **body: Any) -> Raw:
        """Its suture, tied as it was."""
        said = {
            "schema": 1,
            "operation_id": operation["id"],
            "operation_digest": operation["digest"],
            "adjusted_at": "2026-11-25T17:00:00+01:00",
            "surgeon_name": self.full_name,
            "before": [{"range": "distance", "horizontal_pd": 2}],
        }
        return self.record("adjustment", operation["patient"], said | body)

    def follow_up(self, operation: Raw, examination: Raw | None = None, **body: Any) -> Raw:
        """The patient seen a week later, measured where an examination is given."""
        said = {"schema": 1, "operation_id": operation["id"], "visit": "Week 1", "seen_on": "2026-12-02"}
        if examination:
            said |= {"examination_id": examination["id"], "examination_digest": examination["digest"]}
        return self.record("follow_up", operation["patient"], said | body)

    def notebook(self, **body: Any) -> Raw:
        """One case from before the app."""
        return self.record("notebook", None, NOTEBOOK | {"surgeon_name": self.full_name} | body)

    def practice(self, **body: Any) -> Raw:
        """A clinic's own practice: a tablet shows the plan, and a block is waited for longer."""
        return self.record("practice", None, PRACTICE | body)

    def own_results(self, **body: Any) -> Raw:
        """What this person wants to see the own results of."""
        switched_on = [{"family": "recess-both-mr", "table": "wright-after-parks"}]
        said = {"schema": 1, "surgeon_name": self.full_name, "switched_on": switched_on}
        return self.record("own_results", None, said | body)

    def set_up(self, plan: Raw, **body: Any) -> Raw:
        """How the operation of a plan is set up, by the rules alone."""
        said = {"schema": 1, "plan_id": plan["id"], "plan_digest": plan["digest"], "on": "2026-12-01"} | body
        return self.record("set_up", plan["patient"], said)

    def operating_list(self, *plans: Raw, **body: Any) -> Raw:
        """A day's list with these plans in this order."""
        entries = [{"patient_id": plan["patient"], "plan_id": plan["id"], "duration_min": 45} for plan in plans]
        said = {"schema": 1, "on": "2026-12-01", "team": "Harbour team", "entries": entries} | body
        return self.record("operating_list", None, said)

    def again(self, older: Raw, **body: Any) -> Raw:
        """A later version of any record."""
        return self.record(older["kind"], older["patient"], older["body"] | body, supersedes=[older["id"]])

    def line(self, **patient: Any) -> list[Raw]:
        """The whole line for one patient: patient, examination, plan, signature."""
        who = self.patient(**patient)
        measured = self.examination(who)
        planned = self.plan(who, measured)
        return [who, measured, planned, self.signature(planned)]
