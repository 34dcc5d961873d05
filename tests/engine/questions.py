"""What both engines are asked: each list is long enough that the two would differ somewhere if they could."""

import json
from functools import cache
from typing import Any

from planner import desk
from planner.canonical import digest
from tests.planner.generated_cases import generated_cases
from tests.planner.tables.own_table import OWN, TOML

CASES = 960
PLANNED_EVERY = 20
"""Every so many cases, each option is planned, signed and made into a card."""
DRAWN_EVERY = 13
"""Every so many cards are drawn as a page too."""

PATIENT = {
    "schema": 1,
    "full_name": "Zoë Ó Briain-Nuñez",
    "born_on": "2019-02-28",
    "hospital_number": "OR-00417/b",
    "sex": "female",
    "allergies": "latex; Pénicilline",
    "note": 'Δ = 40 ± 5 → "see note"\n\tsecond line, emoji \N{EYE} and \N{HEBREW LETTER ALEF}',
}
TABLE_TEXTS = (
    TOML,
    json.dumps(OWN),
    TOML.replace("mm = 3.5", "mm = 2"),
    TOML.replace("esotropia", "[esotropia]"),
    TOML[:-40],
    "schema = 2026-11-20",
    "a = " + "9" * 5000,
    "a = " + "[" * 199,
    "a = [",
    '\r\n"',
    "",
)
PATIENT_ID = "0192f0c0-0000-7000-8000-000000000001"
EXAMINATION_ID = "0192f0c0-0000-7000-8000-000000000002"
PLAN_ID = "0192f0c0-0000-7000-8000-000000000003"


def ask(name: str, **fields: Any) -> str:
    """A question as the desk reads it."""
    return json.dumps({"ask": name, **fields}, ensure_ascii=False)


answer = cache(desk.answer)
"""The server's; what a later question is built from is answered once."""


def proposals() -> list[str]:
    """The generated cases."""
    return [ask("propose", case=case) for case in generated_cases(CASES, seed=2)]


def combinations(asked: list[str], answered: list[str]) -> list[str]:
    """The same cases again, with a horizontal option and what may go beside it done at one sitting."""
    questions: list[str] = []
    for question, said in zip(asked, answered, strict=True):
        found = json.loads(said).get("answer", {"options": [], "additions": []})
        horizontal = [option["id"] for option in found["options"] if option["doses"]][:1]
        beside = [option["id"] for option in found["additions"] if option["doses"]]
        named = [*horizontal, *beside[len(questions) % 3 :: 3][:2]]
        if len(named) > 1:
            questions.append(ask("propose", case={**json.loads(question)["case"], "combine": named}))
    return questions


def lines_to_the_card(asked: list[str], answered: list[str]) -> list[str]:
    """From proposals on: plan, compare, sign, card and page, each built from the server's answer before it."""
    questions: list[str] = []
    cards = 0
    for question, said in list(zip(asked, answered, strict=True))[::PLANNED_EVERY]:
        case = json.loads(question)["case"]
        found = json.loads(said).get("answer", {"options": [], "additions": []})
        combined = [found["combined"]] if found.get("combined") else []
        for option in [*found["options"], *found["additions"], *combined]:
            questions.append(_draft(case, option))
            plan = json.loads(answer(questions[-1])).get("answer")
            if plan is None:
                continue
            drawn = [_drawn(dose) for dose in plan["option"]["doses"]]
            questions.append(ask("compare_drawing", option=plan["option"], drawn=drawn[1:]))
            questions.append(_sign(plan, drawn))
            pieces = {
                "patient": PATIENT,
                "plan": plan,
                "signature": json.loads(answer(questions[-1]))["answer"],
            }
            questions.append(ask("card", **pieces))
            if cards % DRAWN_EVERY == 0:
                questions.append(ask("card_pdf", **pieces))
            cards += 1
    return questions


def _drawn(dose: dict[str, Any]) -> dict[str, Any]:
    moved = dose["offset"]
    return {name: dose[name] for name in ("eye", "muscle", "operation")} | {
        "offset": moved["direction"] if moved else None
    }


def _draft(case: dict[str, Any], option: dict[str, Any]) -> str:
    return ask(
        "draft_plan",
        case=case,
        option=option["id"],
        patient_id=PATIENT_ID,
        patient_digest=digest(PATIENT),
        examination_id=EXAMINATION_ID,
        examination_digest=digest(case["examination"]),
        note="Nur bei ruhigem Kind.",
    )


def _sign(plan: dict[str, Any], drawn: list[dict[str, Any]]) -> str:
    return ask(
        "sign",
        plan=plan,
        plan_id=PLAN_ID,
        drawn=drawn,
        acknowledged=[each["code"] for each in plan["option"]["notices"] if each["level"] == "caution"],
        signer_name="Ilse Marrow",
        signed_at="2026-11-25T09:30:00+01:00",
    )


def own_results() -> list[str]:
    """Calibrations of few and many cases, and what they say beside the options of generated cases."""
    families = ("recess-both-mr", "recess-mr-resect-lr", "recess-both-lr", "recess-lr-resect-mr")
    learned = [
        {"family": family, "cases": _past_cases(count)} for family in families for count in (0, 1, 7, 10, 53, 400)
    ]
    largest = [each for each in learned if len(each["cases"]) == max(len(one["cases"]) for one in learned)]
    return [
        *(ask("calibrate", **each) for each in learned),
        *(ask("suggest", case=case, families=largest) for case in generated_cases(20, seed=5)),
    ]


def _past_cases(count: int) -> list[dict[str, Any]]:
    return [
        {
            "id": f"00000000-0000-7000-8000-{place:012x}",
            "promised_pd": 15 + place * 7.3 % 45,
            "achieved_pd": 11 + place * 9.7 % 41,
            "days_after": 20 + place % 110,
        }
        for place in range(count)
    ]


def odd_questions() -> list[str]:
    """What a broken or hostile caller might send: the two must refuse in the same words."""
    case = generated_cases(1, seed=3)[0]
    readings = case["examination"]["readings"]

    def with_angle(angle: object) -> str:
        return ask("propose", case={**case, "examination": {"readings": [{**readings[0], "horizontal_pd": angle}]}})

    return [
        "",
        "null",
        "[]",
        "{",
        '{"ask": 7}',
        '{"ask": "nothing"}',
        '{"ask": "about", "ask": "about"}',
        ask("about"),
        ask("about", more=1),
        ask("self_test"),
        ask("propose"),
        ask("check", kind="patient", body=PATIENT),
        ask("check", kind="patient", body={**PATIENT, "born_on": "2019-02-29"}),
        ask("check", kind="patient", body={**PATIENT, "full_name": "\N{GRINNING FACE}" * 200}),
        ask("check", kind="nothing", body={}),
        *map(with_angle, [151, -151, 1e308, 0.1 + 0.2, 5e-324, "40", None, True, [40], 40.05, -0.0]),
        *(ask("read_table", text=text) for text in TABLE_TEXTS),
        ask("check", kind="dose_table", body=OWN),
        ask("check", kind="dose_table", body={**OWN, "exotropia": OWN["esotropia"][::-1]}),
        '{"ask": "propose", "case": 1e999}',
        '{"ask": "propose", "case": NaN}',
        '{"ask": "check", "kind": "patient", "body": ' + "[" * 5000 + "]" * 5000 + "}",
    ]
