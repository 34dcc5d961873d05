"""The phone's engine answers with the same bytes as the server's.

The questions go to Pyodide under Node, through the module that the phone's worker uses and the bundles it loads; the
oracle is the planner in this process's own Python, another interpreter version on another C library.
"""

import base64
import json
from collections import Counter

import pytest

from clinic.build.folders import folders
from clinic.build.node import run_node
from tests.engine import questions

pytestmark = pytest.mark.node

ANSWERS = "tests/engine/answers.mjs"


@pytest.fixture(scope="module")
def asked():
    """Every question with the server's answer."""
    proposals = questions.proposals()
    answered = [questions.answer(question) for question in proposals]
    combined = questions.combinations(proposals, answered)
    proposals += combined
    answered += [questions.answer(question) for question in combined]
    more = questions.lines_to_the_card(proposals, answered) + questions.own_results() + questions.odd_questions()
    return dict(zip(proposals, answered, strict=True)) | {question: questions.answer(question) for question in more}


@pytest.fixture(scope="module")
def run_on_phone(built, asked, tmp_path_factory):
    """What one process on the phone's engine wrote down."""
    folder = tmp_path_factory.mktemp("parity")
    (folder / "release.json").write_bytes(built.text())
    (folder / "questions.json").write_text(json.dumps(list(asked)))
    places = folders()
    arguments = [folder / name for name in ("release.json", "questions.json", "answers.json")]
    run_node(ANSWERS, str(places.site), *map(str, arguments), folder=places.project)
    return json.loads((folder / "answers.json").read_text())


@pytest.fixture(scope="module")
def phone(asked, run_on_phone):
    """The phone's answers by question."""
    return dict(zip(asked, run_on_phone["answers"], strict=True))


def _named(asked, name):
    return [question for question in asked if question.startswith(f'{{"ask": "{name}"')]


def _answered(asked, name):
    return sum("answer" in json.loads(asked[question]) for question in _named(asked, name))


def _differing(questions_asked, asked, phone):
    return [
        (question[:200], asked[question], phone[question])
        for question in questions_asked
        if asked[question] != phone[question]
    ]


@pytest.mark.parametrize("name", ["propose", "draft_plan", "compare_drawing", "sign", "card", "calibrate", "suggest"])
def test_every_answer_has_the_same_bytes(asked, phone, name):
    assert _differing(_named(asked, name), asked, phone) == []


def test_every_page_has_the_same_bytes(asked, phone):
    pages = _named(asked, "card_pdf")

    different = [question[:200] for question in pages if asked[question] != phone[question]]

    assert different == []
    assert all(base64.b64decode(json.loads(phone[page])["answer"]["pdf"]).startswith(b"%PDF-") for page in pages)


def test_odd_questions_are_refused_in_the_same_words(asked, phone):
    assert _differing(questions.odd_questions(), asked, phone) == []


def test_the_phone_starts_from_what_the_build_kept_and_compiles_nothing(run_on_phone):
    assert run_on_phone["compiled"] == 0


def test_the_phone_passes_the_self_test(phone):
    assert json.loads(phone[questions.ask("self_test")])["answer"]["cases"] > 0


def test_the_questions_are_worth_asking(asked):
    """Enough of them, of every kind, with refusals, stops and cautions, and with every family of operations."""
    proposed = [json.loads(asked[question]) for question in _named(asked, "propose")]
    answers = [answer["answer"] for answer in proposed if "answer" in answer]
    options = [option for answer in answers for option in [*answer["options"], *answer["additions"]]]
    levels = Counter(notice["level"] for option in options for notice in option["notices"])

    assert len(answers) >= 1000
    assert len([answer for answer in proposed if "faults" in answer]) >= 10
    assert {option["family"] for option in options} == {
        "both eyes",
        "one eye",
        "one muscle",
        "three muscles",
        "four muscles",
        "vertical recti",
        "obliques",
        "dissociated vertical deviation",
        "torsion",
        "tendon offset",
    }
    assert sum(option["prediction"] is not None for option in options) >= 1000
    assert sum(len(option["prediction"]["gazes"]) > 0 for option in options if option["prediction"]) >= 500
    assert sum(answer["combined"] is not None for answer in answers) >= 200
    assert sum(len(answer["principles"]) > 0 for answer in answers) >= 50
    assert {answer["target"]["aim"] for answer in answers} == {"distance", "after patching", "prism adapted", "near"}
    assert {answer["table"]["id"] for answer in answers} >= {"classic-parks", "harbour-clinic"}
    assert min(levels[level] for level in ("stop", "caution", "note")) >= 100
    assert any(dose["changed"] for option in options for dose in option["doses"])
    assert _answered(asked, "compare_drawing") >= 200
    assert _answered(asked, "sign") >= 200
    assert _answered(asked, "card") >= 200
    assert _answered(asked, "card_pdf") >= 15
