"""The phone app's own tests (``*.test.js`` beside this file), run in the Node that the project brings."""

import re
from pathlib import Path

import pytest

from clinic.build.node import run_node
from clinic.build.packages import install_packages, missing_packages

HERE = Path(__file__).parent
PROJECT = HERE.parents[1]
SUITES = sorted(HERE.rglob("*.test.js"))


@pytest.fixture(scope="session", autouse=True)
def npm_packages():
    if missing_packages(PROJECT):
        install_packages(PROJECT)


@pytest.mark.parametrize("suite", SUITES, ids=lambda suite: suite.relative_to(HERE).as_posix())
def test_the_module_keeps_its_promises(suite):
    """A failing or crashing suite ends with another status than 0, and ``run_node`` raises with what failed last.

    A suite is run as the program it is: ``--test`` would start a second Node for it, and call an empty one passed.
    """
    arguments = ("--import", "./tests/static/support/vendor.mjs", "--test-reporter=spec", str(suite))

    printed = run_node(*arguments, folder=PROJECT)

    assert re.search(r"^\S pass [1-9]\d*$", printed, re.MULTILINE)
