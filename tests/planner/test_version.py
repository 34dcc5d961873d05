"""The same version gives the same answers: a plan made by one device is made again by another and compared whole."""

import json
from hashlib import sha256
from pathlib import Path

from planner.desk import answer
from planner.version import ENGINE_VERSION
from tests.planner.generated_cases import generated_cases

FROZEN = Path(__file__).parents[2] / "fixtures" / "engine-answers.json"


def test_answers_do_not_change_without_the_version():
    """A wanted change: raise ``ENGINE_VERSION`` and add the digest that this test names to the fixture."""
    questions = [{"ask": "propose", "case": case} for case in generated_cases(300, seed=2026)]
    answers = "\n".join(answer(json.dumps(question)) for question in questions)
    frozen = json.loads(FROZEN.read_text(encoding="utf-8"))

    assert frozen["digests"].get(ENGINE_VERSION) == sha256(answers.encode()).hexdigest()
