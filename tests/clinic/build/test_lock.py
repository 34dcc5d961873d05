"""One builder at a time, and no stale lock."""

import subprocess
import sys
import threading
import time

import pytest

from clinic.build.lock import only_builder

HOLD = """
import sys, time
from pathlib import Path
from clinic.build.lock import only_builder
with only_builder(Path(sys.argv[1])):
    print("held", flush=True)
    time.sleep(60)
"""


@pytest.fixture
def other_builder(tmp_path):
    process = subprocess.Popen([sys.executable, "-c", HOLD, tmp_path / "lock"], stdout=subprocess.PIPE, text=True)
    assert process.stdout.readline() == "held\n"
    yield process
    process.kill()
    process.wait()
    process.stdout.close()


def test_a_second_builder_says_that_it_waits_and_goes_on_when_the_first_is_killed(other_builder, tmp_path):
    told = threading.Event()
    threading.Thread(target=lambda: told.wait(30) and other_builder.kill()).start()
    started = time.monotonic()

    with only_builder(tmp_path / "lock", waiting=told.set):
        waited = time.monotonic() - started

    assert told.is_set()
    assert waited > 0
    assert other_builder.wait(10) != 0


def test_a_lone_builder_does_not_wait(tmp_path):
    for _ in range(2):
        with only_builder(tmp_path / "lock", waiting=lambda: pytest.fail("nobody else is there")):
            pass
