"""The check for known advisories: what fails it, what is noted, and that silence is told as silence."""

import importlib.util
import json
import sys

import pytest

from clinic.build.folders import folders


@pytest.fixture(scope="module")
def check():
    spec = importlib.util.spec_from_file_location("advisories", folders().project / ".ci" / "advisories.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    yield module
    del sys.modules[spec.name]


def python(*fixes):
    found = {
        "dependency": {"name": "weaver", "version": "1.0"},
        "display_id": "A-1",
        "summary": "It unravels",
        "fix_versions": list(fixes),
    }
    return json.dumps({"vulnerabilities": [found]})


def npm(severity, *, fixed):
    return json.dumps({"vulnerabilities": {"loom": {"severity": severity, "range": "<2", "fixAvailable": fixed}}})


NONE = {"uv audit": '{"vulnerabilities": []}', "npm": '{"vulnerabilities": {}}'}


@pytest.mark.parametrize(
    ("answers", "status", "words"),
    [
        (NONE, 0, "answered, 0 known"),
        (NONE | {"uv audit": python("1.1")}, 1, "MUST BE ACTED ON: weaver 1.0: A-1: It unravels; fixed in 1.1"),
        (NONE | {"uv audit": python()}, 0, "noted: weaver 1.0"),
        (NONE | {"npm": npm("high", fixed=True)}, 1, "MUST BE ACTED ON: loom <2"),
        (NONE | {"npm": npm("high", fixed=False)}, 0, "noted: loom <2: high; not fixed yet"),
        (NONE | {"npm": npm("moderate", fixed=True)}, 0, "noted: loom <2"),
        (NONE | {"uv audit": ""}, 0, "Python packages: NOT ANSWERED"),
        (NONE | {"npm": '{"message": "405 Method Not Allowed"}'}, 0, "npm packages: NOT ANSWERED"),
        (NONE | {"npm": "<html>"}, 0, "npm packages: NOT ANSWERED"),
        ({"uv audit": python("1.1"), "npm": ""}, 1, "npm packages: NOT ANSWERED"),
    ],
)
def test_what_is_said_and_what_fails(check, capsys, answers, status, words):
    def ask(command):
        return next(answer for name, answer in answers.items() if name in " ".join(command))

    assert check.main(ask) == status
    assert words in capsys.readouterr().out


def test_a_program_that_is_missing_has_not_answered(check):
    assert check.asked(("no-such-program-anywhere",)) == ""
