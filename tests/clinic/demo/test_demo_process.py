"""``manage.py demo`` as a person starts it: a process of its own, on an SQLite file, after whatever happened before."""

import json
import os
import signal
import socket
import subprocess
import sys
import urllib.request

import pytest

from clinic.build.folders import folders
from clinic.demo.scenario import read_scenario, scenario_path

PATIENCE_SECONDS = 60


@pytest.fixture
def state(built, tmp_path):
    return tmp_path / "state"


@pytest.fixture
def port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return str(probe.getsockname()[1])


def _environment(**variables):
    kept = {
        name: value for name, value in os.environ.items() if not name.startswith(("CLINIC_", "DATABASE_URL", "DJANGO_"))
    }
    return kept | {name: str(value) for name, value in variables.items()}


def _manage(*arguments, **variables):
    return subprocess.run(
        [sys.executable, "manage.py", *arguments],
        cwd=folders().project,
        env=_environment(**variables),
        capture_output=True,
        text=True,
        timeout=PATIENCE_SECONDS,
        check=False,
    )


def test_a_database_that_was_left_half_way_is_finished(state, port):
    assert _manage("migrate", "people", "0001", CLINIC_STATE=state).returncode == 0

    done = _manage("demo", "--small", "--no-serve", "--port", port, CLINIC_STATE=state)

    assert done.returncode == 0, done.stderr
    assert "Loading Orrimar Islands eye outreach ... done" in done.stdout


def test_a_file_that_is_no_database_is_named_and_left_alone(state, port):
    state.mkdir()
    (state / "clinic.sqlite3").write_text("notes of somebody's holiday " * 50)

    done = _manage("demo", "--small", "--no-serve", "--port", port, CLINIC_STATE=state)

    assert done.returncode != 0
    assert f"{state / 'clinic.sqlite3'} cannot be used" in done.stderr
    assert "Traceback" not in done.stderr
    assert (state / "clinic.sqlite3").read_text().startswith("notes")


@pytest.mark.parametrize("variable", ["CLINIC_STATE", "CLINIC_BUILD"])
def test_a_folder_that_cannot_be_written_to_is_named(state, port, tmp_path, variable):
    """A folder below a file can be made by nobody, the administrator included."""
    (tmp_path / "file").touch()
    place = tmp_path / "file" / "folder"

    done = _manage("demo", "--small", "--no-serve", "--port", port, **{"CLINIC_STATE": state, variable: place})

    assert done.returncode != 0
    assert str(place) in done.stderr
    assert "Traceback" not in done.stderr


def test_from_nothing_it_serves_the_app_and_the_api_until_it_is_interrupted(state, port):
    scenario = read_scenario(scenario_path())
    server = subprocess.Popen(
        [sys.executable, "-u", "manage.py", "demo", "--small", "--port", port],
        cwd=folders().project,
        env=_environment(CLINIC_STATE=state),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    try:
        said = _until(server.stdout, "Stop with Ctrl-C")
        page = _get(f"http://127.0.0.1:{port}/")
        health = _get(f"http://127.0.0.1:{port}/health")
        server.send_signal(signal.SIGINT)
        rest, errors = server.communicate(timeout=PATIENCE_SECONDS)
    finally:
        server.kill()
        server.wait()

    assert "Loading Orrimar Islands eye outreach ... done" in said
    assert scenario.clinic_name in said.partition("... done")[2]
    assert (state / "clinic.sqlite3").is_file()
    assert b"/static/app/" in page
    assert json.loads(health) == {"status": "ok"}
    assert "Stopped." in rest
    assert "Traceback" not in errors
    assert server.returncode == 0


def _until(stream, end):
    lines = []
    for line in stream:
        lines.append(line)
        if end in line:
            break
    return "".join(lines)


def _get(url):
    with urllib.request.urlopen(url, timeout=PATIENCE_SECONDS) as answer:  # noqa: S310 - this machine's own address
        return answer.read()
