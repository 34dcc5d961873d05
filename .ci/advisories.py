"""Known advisories against what the project installs, from both registries' services: ``python3 .ci/advisories.py``.

A service that does not answer is said to have not answered, which is no pass and no failure: a change is not to blame
for it. It fails on an advisory that a newer version fixes (of npm: a high or critical one); the others are printed.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

PATIENCE_S = 60
SERIOUS = {"high", "critical"}


@dataclass(frozen=True, kw_only=True)
class Advisory:
    """One, against one package; ``must`` be acted on before a change passes."""

    package: str
    text: str
    must: bool


def of_python(said: dict[str, Any]) -> list[Advisory]:
    """What ``uv audit`` found."""
    return [
        Advisory(
            package=f"{found['dependency']['name']} {found['dependency']['version']}",
            text=f"{found['display_id']}: {found['summary']}; fixed in {fixes(found)}",
            must=bool(found["fix_versions"]),
        )
        for found in said["vulnerabilities"]
    ]


def fixes(found: dict[str, Any]) -> str:
    """The versions that are without it."""
    return ", ".join(found["fix_versions"]) or "nothing yet"


def of_npm(said: dict[str, Any]) -> list[Advisory]:
    """What ``npm audit`` found."""
    return [
        Advisory(
            package=f"{name} {found['range']}",
            text=f"{found['severity']}; {'fixed by a newer version' if found['fixAvailable'] else 'not fixed yet'}",
            must=found["severity"] in SERIOUS and bool(found["fixAvailable"]),
        )
        for name, found in said["vulnerabilities"].items()
    ]


SERVICES: dict[str, tuple[tuple[str, ...], Callable[[dict[str, Any]], list[Advisory]]]] = {
    "Python packages": (("uv", "audit", "--frozen", "--output-format", "json"), of_python),
    "npm packages": (("uv", "run", "--no-sync", "npm", "audit", "--json"), of_npm),
}


def asked(command: tuple[str, ...]) -> str:
    """What the command prints; nothing if it does not end in time."""
    try:
        done = subprocess.run(command, capture_output=True, text=True, timeout=PATIENCE_S, check=False)  # noqa: S603
    except (OSError, subprocess.TimeoutExpired):
        return ""
    return done.stdout


def read(text: str, understand: Callable[[dict[str, Any]], list[Advisory]]) -> list[Advisory] | None:
    """The advisories; None for a text that is no answer of the service."""
    try:
        return understand(json.loads(text))
    except (ValueError, KeyError, TypeError, AttributeError):
        return None


def main(ask: Callable[[tuple[str, ...]], str] = asked) -> int:
    """1 if something must be acted on."""
    failed = False
    for what, (command, understand) in SERVICES.items():
        found = read(ask(command), understand)
        if found is None:
            print(f"{what}: NOT ANSWERED. Nothing is known about advisories; this is no pass.")
            continue
        print(f"{what}: answered, {len(found)} known advisories")
        for each in found:
            print(f"  {'MUST BE ACTED ON' if each.must else 'noted'}: {each.package}: {each.text}")
        failed = failed or any(each.must for each in found)
    return int(failed)


if __name__ == "__main__":
    sys.exit(main())
