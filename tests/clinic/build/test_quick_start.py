"""The desk opens from what the build kept, compiles nothing again, and answers as ever.

Each start has a process of its own: what matters happens when the planner is first imported.
"""

import json
import shutil
import subprocess
import sys

import pytest

from clinic.build.folders import folders

MODULE = folders().project / "clinic/build/on_phone/quick_start.py"


@pytest.fixture
def place(tmp_path):
    shutil.copy(MODULE, tmp_path)
    (tmp_path / "quick_start.bin").write_bytes(bytes.fromhex(_run(tmp_path, "print(quick_start.record().hex())")))
    return tmp_path


def _run(place, script):
    paths = [str(place), str(folders().project)]
    prelude = f"import json, sys; sys.path[:0] = {paths!r}; import quick_start; "
    done = subprocess.run([sys.executable, "-c", prelude + script], capture_output=True, text=True, check=True)
    return done.stdout.strip()


def test_nothing_is_compiled_again(place):
    missed = json.loads(_run(place, "quick_start.desk(); print(json.dumps(quick_start.missed))"))

    assert missed == []


def test_the_desk_answers_as_the_one_that_is_imported_plainly(place):
    request = '{"ask": "self_test"}'
    quick = _run(place, f"print(quick_start.desk().answer('{request}'))")
    plain = _run(place, f"import planner.desk; print(planner.desk.answer('{request}'))")

    assert quick == plain
    assert json.loads(quick)["answer"]["cases"] > 0


def test_what_the_build_did_not_keep_is_compiled_as_ever(place):
    (place / "quick_start.bin").write_bytes(b"{0")  # an empty dictionary, in marshal's own form

    said = _run(place, "desk = quick_start.desk(); print(json.dumps([len(quick_start.missed), desk.answer('[]')]))")
    missed, answer = json.loads(said)

    assert missed > 20
    assert "faults" in json.loads(answer)


def test_dataclasses_are_left_as_they_were(place):
    assert _run(place, "quick_start.desk(); import dataclasses; print(hasattr(dataclasses, 'exec'))") == "False"
