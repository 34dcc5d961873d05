"""The server as the unit starts it, in production, asked as the proxy of the example asks it."""

import json
import os
import re
import shlex
import subprocess
import sys
import time
from collections.abc import Iterator
from http.client import HTTPConnection
from pathlib import Path

import pytest
from django.conf import settings

from clinic.api.session.throttle import TriesPerAddress
from tests.journeys.site.server import ADDRESS, free_port

ROOT = Path(settings.BASE_DIR)
DEPLOY = ROOT / "clinic" / "deploy"
HOST = "clinic.example"
START_LIMIT_S = 60
ONE, OTHER = "192.0.2.1", "192.0.2.2"


class Proxy:
    """Asks the server at ``port`` for somebody at an address, with the headers that ``proxy.conf`` makes of theirs."""

    def __init__(self, port: int) -> None:
        self.port = port
        self._sets = re.findall(r"^ +proxy_set_header (\S+) (\S+);", (DEPLOY / "proxy.conf").read_text(), re.MULTILINE)

    def passed_on(self, headers: dict[str, str], address: str) -> dict[str, str]:
        """What nginx sends: a header that it sets takes the place of the one that came."""
        came = {name.lower(): value for name, value in headers.items()}
        variables = {
            "$host": HOST,
            "$remote_addr": address,
            "$proxy_add_x_forwarded_for": ", ".join(filter(None, (came.get("x-forwarded-for"), address))),
        }
        return came | {name.lower(): variables.get(value, value) for name, value in self._sets}

    def ask(
        self, path: str, *, address: str = ONE, method: str = "GET", body: object = None, **headers: str
    ) -> tuple[int, dict[str, str], bytes]:
        """Status, headers and body."""
        named = {name.replace("_", "-"): value for name, value in headers.items()}
        return send(self.port, path, self.passed_on(named, address), method=method, body=body)


def send(
    port: int, path: str, headers: dict[str, str], *, method: str = "GET", body: object = None
) -> tuple[int, dict[str, str], bytes]:
    """Straight to the server."""
    caller = HTTPConnection(ADDRESS, port, timeout=20)
    try:
        caller.request(method, path, None if body is None else json.dumps(body), headers)
        answer = caller.getresponse()
        return answer.status, {name.lower(): value for name, value in answer.getheaders()}, answer.read()
    finally:
        caller.close()


def arguments_of_the_unit(port: int) -> list[str]:
    """As systemd splits the line, without the program."""
    (line,) = re.findall(r"^ExecStart=(.+)$", (DEPLOY / "primary-position@.service").read_text(), re.MULTILINE)
    program, *arguments = shlex.split(line.replace("%i", str(port)))
    assert Path(program).name == "waitress-serve"
    return arguments


def environment_of_the_example(state: Path) -> dict[str, str]:
    """The example's variables, its secret filled in, its folder another."""
    lines = (DEPLOY / "primary-position.env").read_text().splitlines()
    told = dict(line.split("=", 1) for line in lines if line and not line.startswith("#"))
    inherited = {name: value for name, value in os.environ.items() if not name.startswith(("CLINIC_", "DATABASE_URL"))}
    return inherited | told | {"CLINIC_SECRET_KEY": "k3Qz-" * 14, "CLINIC_STATE": str(state)}


@pytest.fixture(scope="module")
def proxy(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Proxy]:
    """In front of a server that answers."""
    state = tmp_path_factory.mktemp("state")
    variables, port = environment_of_the_example(state), free_port()
    assert variables["CLINIC_MODE"] == "production"
    subprocess.run([sys.executable, "manage.py", "migrate", "-v0"], cwd=ROOT, env=variables, check=True)
    with (state / "log").open("wb") as log:
        command = [sys.executable, "-m", "waitress", *arguments_of_the_unit(port)]
        server = subprocess.Popen(command, cwd=ROOT, env=variables, stdout=log, stderr=log)
    try:
        limit = time.monotonic() + START_LIMIT_S
        while True:
            assert server.poll() is None, (state / "log").read_text()
            assert time.monotonic() < limit, (state / "log").read_text()
            try:
                send(port, "/health", {"Host": HOST})
                break
            except OSError:
                time.sleep(0.05)
        yield Proxy(port)
    finally:
        server.terminate()
        server.wait(20)


def test_a_visitor_by_https_is_answered_and_not_sent_round(proxy):
    status, headers, body = proxy.ask("/api/v1/session")

    assert status == 200, headers.get("location")
    assert json.loads(body)["user"] is None
    assert "max-age" in headers["strict-transport-security"], "Django holds the call for one by HTTPS"


def test_who_comes_past_the_proxy_by_http_is_sent_to_https(proxy):
    status, headers, _ = send(proxy.port, "/api/v1/session", {"Host": HOST})

    assert (status, headers["location"]) == (301, f"https://{HOST}/api/v1/session")


def test_figures_are_for_this_machine_and_not_for_whom_the_proxy_speaks_for(proxy):
    assert send(proxy.port, "/metrics", {"Host": HOST})[0] == 200
    assert proxy.ask("/metrics")[0] == 404
    assert proxy.ask("/metrics", X_Forwarded_For="127.0.0.1")[0] == 404


def test_tries_to_sign_in_are_counted_by_the_visitors_own_address_whatever_the_visitor_claims(proxy):
    most, _ = TriesPerAddress().parse_rate(TriesPerAddress.rate)
    _, headers, body = proxy.ask("/api/v1/session")
    # An incomplete try: it is counted for its address, and no password is looked at.
    known = {
        "Cookie": headers["set-cookie"].split(";")[0],
        "X_CSRFToken": json.loads(body)["csrf_token"],
        "Origin": f"https://{HOST}",
        "Content_Type": "application/json",
    }

    def attempt(address: str, **claimed: str) -> int:
        return proxy.ask("/api/v1/session", address=address, method="POST", body={}, **known, **claimed)[0]

    assert {attempt(ONE, X_Forwarded_For=f"198.51.100.{count}") for count in range(most)} == {400}
    assert attempt(ONE) == 429
    assert attempt(ONE, X_Forwarded_For=OTHER) == 429
    assert attempt(ONE, Forwarded=f"for={OTHER}", X_Real_IP=OTHER) == 429
    assert attempt(OTHER) == 400
