"""The desk answers every request, honest or hostile, with an answer or with coded faults."""

import base64
import copy
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner import self_test
from planner.canonical import digest
from planner.checkword import check_word
from planner.codec.text import MOST_CHARACTERS
from planner.desk import ASKS, answer
from tests.planner.generated_cases import generated_cases

EXAMINATION = {
    "schema": 1,
    "examined_on": "2026-11-02",
    "readings": [{"gaze": "primary", "range": "distance", "correction": "with", "horizontal_pd": 60}],
}
CASE = {"schema": 1, "examination": EXAMINATION, "table": "wright-after-parks"}
PATIENT = {"schema": 1, "full_name": "Ana Example", "born_on": "2001-05-17", "hospital_number": "PP-0007"}
DRAFT = {
    "case": CASE,
    "option": "recess-both-mr",
    "patient_id": "0190a0b0-0000-7000-8000-000000000001",
    "patient_digest": digest(PATIENT),
    "examination_id": "0190a0b0-0000-7000-8000-000000000002",
    "examination_digest": digest(EXAMINATION),
    "note": "Under general anaesthesia.",
}
DRAWN = [{"eye": eye, "muscle": "MR", "operation": "recess"} for eye in ("left", "right")]
ATTESTATION = {
    "plan_id": "0190a0b0-0000-7000-8000-000000000003",
    "drawn": DRAWN,
    "acknowledged": ["above_usual_maximum-both-mr"],
    "signer_name": "Dr. Mira Example",
    "signed_at": "2026-11-25T09:30:00+01:00",
}


def ask(name, **fields):
    return json.loads(answer(json.dumps({"ask": name, **fields})))


def answered(name, **fields):
    said = ask(name, **fields)
    assert "answer" in said, said
    return said["answer"]


def codes(name, **fields):
    return [fault["code"] for fault in ask(name, **fields)["faults"]]


def test_the_engine_says_who_it_is_and_names_the_published_table_first():
    about = answered("about")

    assert about["engine_version"] == "2.0.0"
    ids = [table["id"] for table in about["tables"]]
    assert ids == ["wright-after-parks", "classic-parks", "large-angle-two-muscles"]


def test_a_valid_body_passes_the_check_and_a_bad_one_is_told_field_by_field():
    assert answered("check", kind="patient", body=PATIENT) == {}
    said = ask("check", kind="patient", body=PATIENT | {"born_on": "1790-01-01"})
    assert said["faults"][0].keys() == {"code", "text", "field", "value", "allowed"}
    assert said["faults"][0]["field"] == "born_on"


@pytest.mark.parametrize("missing", ["kind", "body"])
def test_a_check_needs_kind_and_body(missing):
    fields = {"kind": "patient", "body": PATIENT}
    del fields[missing]

    assert codes("check", **fields) == ["missing"]


def test_the_whole_line_from_case_to_page():
    plan = answered("draft_plan", **DRAFT)
    assert plan["option"] in answered("propose", case=CASE)["options"]
    assert answered("compare_drawing", option=plan["option"], drawn=DRAWN)["equal"]
    signature = answered("sign", plan=plan, **ATTESTATION)
    assert signature["plan_digest"] == digest(plan)
    assert signature["check_word"] == check_word(digest(plan))
    pieces = {"patient": PATIENT, "plan": plan, "signature": signature}
    card = answered("card", **pieces)
    assert card["check_word"] == signature["check_word"]
    assert [line["mm"] for line in card["lines"]] == [6.5, 6.5]
    page = base64.b64decode(answered("card_pdf", **pieces)["pdf"])

    assert page.startswith(b"%PDF")


def test_a_plan_for_another_examination_is_not_drafted():
    assert codes("draft_plan", **DRAFT | {"examination_digest": "0" * 64}) == ["other_examination"]


def test_a_plan_that_was_altered_on_the_way_is_not_signed():
    plan = answered("draft_plan", **DRAFT)
    altered = copy.deepcopy(plan)
    altered["option"]["doses"][0]["eye"] = "left"
    altered["option"]["doses"][0]["muscle"] = "LR"

    assert codes("sign", plan=altered, **ATTESTATION) == ["other_doses"]


def test_a_caution_that_was_not_acknowledged_keeps_the_plan_unsigned():
    plan = answered("draft_plan", **DRAFT)

    assert codes("sign", plan=plan, **ATTESTATION | {"acknowledged": []}) == ["caution_not_acknowledged"]


def test_a_plan_read_by_javascript_is_signed_with_the_same_digest():
    plan = answered("draft_plan", **DRAFT)
    as_javascript_writes_it = json.loads(json.dumps(plan).replace(".0,", ",").replace(".0}", "}"))

    assert answered("sign", plan=as_javascript_writes_it, **ATTESTATION)["plan_digest"] == digest(plan)


@pytest.mark.parametrize("name", sorted(ASKS))
def test_a_question_with_a_field_too_many_is_refused(name):
    assert "unknown_field" in codes(name, colour="red")


@pytest.mark.parametrize(
    ("request_text", "code"),
    [
        ("", "bad_json"),
        ("[]", "wrong_type"),
        ("{}", "unknown_ask"),
        ('{"ask": "horoscope"}', "unknown_ask"),
        ('{"ask": ["about"]}', "unknown_ask"),
        ('{"ask": "about", "ask": "about"}', "repeated"),
        ("[" * 100_000, "too_deep"),
        (" " * (MOST_CHARACTERS + 1), "too_long"),
    ],
    ids=lambda value: value[:20],
)
def test_a_request_that_is_none_gets_its_code(request_text, code):
    assert [fault["code"] for fault in json.loads(answer(request_text))["faults"]] == [code]


def test_the_self_test_runs_its_frozen_cases():
    assert answered("self_test") == {"cases": 10}


def test_a_frozen_case_that_comes_out_otherwise_is_a_fault(monkeypatch, tmp_path):
    frozen = json.loads(self_test.CASES.read_text(encoding="utf-8"))
    frozen[0]["doses"][1] = "left MR recess 6"
    (tmp_path / "cases.json").write_text(json.dumps(frozen), encoding="utf-8")
    monkeypatch.setattr(self_test, "CASES", tmp_path / "cases.json")

    assert codes("self_test") == ["self_test_failed"]


@given(st.text())
def test_any_text_is_answered(text):
    said = json.loads(answer(text))

    assert said.keys() in ({"answer"}, {"faults"})


ANY_JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=10,
)


def spots(value, path=()):
    yield path
    if isinstance(value, dict | list):
        for key, inner in value.items() if isinstance(value, dict) else enumerate(value):
            yield from spots(inner, (*path, key))


@given(st.sampled_from(sorted(ASKS)), st.data())
def test_any_request_with_any_spot_spoilt_is_answered(name, data):
    plan = json.loads(answer(json.dumps({"ask": "draft_plan", **DRAFT})))["answer"]
    requests = {
        "check": {"kind": "plan", "body": plan},
        "propose": {"case": CASE},
        "draft_plan": DRAFT,
        "compare_drawing": {"option": plan["option"], "drawn": DRAWN},
        "sign": {"plan": plan, **ATTESTATION},
        "card": {"patient": PATIENT, "plan": plan, "signature": {}},
        "card_pdf": {"patient": PATIENT, "plan": plan, "signature": {}},
    }
    fields = copy.deepcopy(requests.get(name, {}))
    for _ in range(data.draw(st.integers(0, 2))):
        choices = [spot for spot in spots(fields) if spot]
        if not choices:
            break
        *way, last = data.draw(st.sampled_from(choices))
        place = fields
        for step in way:
            place = place[step]
        place[last] = data.draw(ANY_JSON)

    said = json.loads(answer(json.dumps({"ask": name, **fields})))

    assert said.keys() in ({"answer"}, {"faults"})
    assert all(fault["code"] and fault["text"] for fault in said.get("faults", ()))


def test_generated_cases_are_the_same_every_time_and_mostly_answered():
    """The parity of server and phone is tested on these."""
    cases = generated_cases(1000, seed=7)
    said = [ask("propose", case=case) for case in cases]

    assert cases == generated_cases(1000, seed=7)
    assert cases != generated_cases(1000, seed=8)
    assert sum("answer" in each for each in said) > 850
    assert {fault["code"] for each in said for fault in each.get("faults", ())} <= {
        "no_horizontal_deviation",
        "unknown_option",
        "option_without_doses",
        "aim_not_measured",
        "overcorrection_not_meant",
        "second_prism",
        "out_of_range",
        "total_internal_reflection",
        "beyond_measurable",
        "beyond_right_angle",
    }
