"""The engine stands alone: no Django, no site, no third package but ReportLab, and that only to draw a page."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]

PROGRAM = """
import sys

class Blocked:
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] not in sys.stdlib_module_names | {"planner"}:
            raise ImportError(f"{name} is blocked")

sys.meta_path.insert(0, Blocked())
import planner, planner.__main__
from planner.desk import answer

print(answer('{"ask": "self_test"}'))
foreign = {name.split(".")[0] for name in sys.modules} - set(sys.stdlib_module_names) - {"planner", "__main__"}
print(sorted(name for name in foreign if not name.startswith(("_", "sitecustomize", "usercustomize"))))
"""


def test_the_engine_answers_where_nothing_but_the_standard_library_can_be_imported():
    command = [sys.executable, "-S", "-c", PROGRAM]
    done = subprocess.run(command, capture_output=True, cwd=ROOT, check=False, timeout=60, text=True)

    assert done.stderr == ""
    assert done.stdout.splitlines() == ['{"answer":{"cases":10}}', "[]"]
