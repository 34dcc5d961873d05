"""The bench runs: no figure is judged, but each is there."""

import re
import subprocess
import sys

import pytest

from clinic.build.folders import folders
from tests.bench.measures import BY_HAND, GROUPS
from tests.journeys.browser.chromium import MISSING, chromium_path


@pytest.mark.journey
@pytest.mark.skipif(chromium_path() is None, reason=MISSING)
def test_every_group_prints_its_figures(built):
    groups = [name for name in GROUPS if name not in BY_HAND]
    command = (sys.executable, "-m", "tests.bench", "--smoke", *groups)

    done = subprocess.run(command, cwd=folders().project, capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stderr
    for name in groups:
        printed = done.stdout.partition(GROUPS[name].TITLE)[2].split("\n\n")[0]
        assert re.search(r"\s\d+\s+[\d,.]+ (ms|kB)\s", printed), f"no figure under: {name}"
