"""The bench runs: no figure is judged, but each is there."""

import os
import re
import subprocess
import sys

import pytest

from clinic.build.folders import folders
from tests.bench.measures import GROUPS, QUICK
from tests.journeys.browser.chromium import MISSING, chromium_path


@pytest.mark.journey
@pytest.mark.skipif(chromium_path() is None, reason=MISSING)
def test_the_quick_groups_print_their_figures(built):
    command = (sys.executable, "-m", "tests.bench", "--smoke", "--longest", "600", *QUICK)
    on_sqlite = {name: value for name, value in os.environ.items() if name != "DATABASE_URL"}

    done = subprocess.run(command, cwd=folders().project, env=on_sqlite, capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stderr
    for name in QUICK:
        printed = done.stdout.partition(GROUPS[name].TITLE)[2].split("\n\n")[0]
        assert re.search(r"\s\d+\s+[\d,.]+ (ms|kB|s)\s", printed), f"no figure under: {name}"
