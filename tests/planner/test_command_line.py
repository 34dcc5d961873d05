"""``python -m planner < case.json`` prints the proposal, and refuses with faults and exit status 2."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from planner.canonical import canonical
from planner.codec import read, write
from planner.proposal import propose
from planner.records.case import Case

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "planner" / "examples").glob("*.json"))


def run(text, *arguments):
    command = [sys.executable, "-m", "planner", *arguments]
    return subprocess.run(command, input=text.encode(), capture_output=True, cwd=ROOT, check=False, timeout=60)


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda file: file.stem)
def test_every_example_is_answered_as_the_engine_answers_it(example):
    text = example.read_text(encoding="utf-8")
    expected = write(propose(read(Case, json.loads(text))))
    plain, canonical_line = run(text), run(text, "--canonical")

    assert (plain.returncode, plain.stderr) == (0, b"")
    assert json.loads(plain.stdout) == expected
    assert canonical_line.stdout.decode() == canonical(expected) + "\n"


@pytest.mark.parametrize(
    ("text", "arguments", "code"),
    [
        ("{", (), "bad_json"),
        ("\ufeff{}", (), "missing"),
        ('{"schema": 9}', (), "unsupported_schema"),
        ("{}", ("--table",), "unknown_argument"),
    ],
)
def test_a_refusal_goes_to_standard_error_with_exit_status_2(text, arguments, code):
    done = run(text, *arguments)

    assert (done.returncode, done.stdout) == (2, b"")
    assert json.loads(done.stderr)["faults"][0]["code"] == code


def test_bytes_that_are_no_text_are_refused():
    command = [sys.executable, "-m", "planner"]
    done = subprocess.run(command, input=b"\xff\xfe{", capture_output=True, cwd=ROOT, check=False, timeout=60)

    assert (done.returncode, json.loads(done.stderr)["faults"][0]["code"]) == (2, "bad_json")
