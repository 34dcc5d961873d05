"""The threat model names what is there."""

import re

from clinic.build.folders import folders

PROJECT = folders().project
THREATS = (PROJECT / "clinic/protection/THREATS.md").read_text(encoding="utf-8")


def test_every_test_that_it_calls_upon_exists():
    named = set(re.findall(r"`(tests/[^`]+)`", THREATS))

    assert len(named) > 20
    assert [path for path in named if not (PROJECT / path).exists()] == []


def test_every_command_that_it_calls_upon_exists():
    named = set(re.findall(r"manage\.py (\w+)", THREATS))
    commands = {path.stem for path in PROJECT.glob("clinic/*/management/commands/*.py")}

    assert named
    assert named <= commands


def test_every_threat_says_what_is_done_what_remains_and_what_shows_it():
    tables = THREATS.partition("## Threats")[2].partition("## How long")[0]
    rows = [line.strip("|").split("|") for line in tables.splitlines() if line.startswith("|")]

    assert len(rows) > 20
    assert [row for row in rows if len(row) != 5 or not all(cell.strip() for cell in row)] == []


def test_the_readme_and_the_developers_page_lead_to_it():
    for page in ("README.md", "DEVELOPERS.md"):
        assert "clinic/protection/THREATS.md" in (PROJECT / page).read_text(encoding="utf-8"), page
