"""Measures the product and prints a table: ``uv run python -m tests.bench``.

    uv run python -m tests.bench                 everything, several runs each; leave the machine alone meanwhile
    uv run python -m tests.bench starts engine   these groups only (tests/bench/measures/)
    uv run python -m tests.bench --smoke         everything once, to see that figures come out

The groups of the load, ``inserts``, ``fleet`` and ``long_ledger``, also take PostgreSQL where DATABASE_URL points to
one; the others work on SQLite.

Nothing is judged: aims stand beside the figures, and a person reads them. Ratios compare what was measured in the same
run. All is on this one machine over loopback; "4x" is the renderer processes four times slower (slow.py), which is no
phone, and only Linux can do it.
"""

from __future__ import annotations

import argparse
import os
import platform
import sys
from collections.abc import Sequence
from pathlib import Path
from tempfile import TemporaryDirectory

from playwright.sync_api import expect, sync_playwright

from tests.bench.bench import Bench, started_browser
from tests.bench.measures import GROUPS
from tests.bench.preparing import prepared
from tests.bench.table import heading, row
from tests.journeys.browser.chromium import MISSING, chromium_path
from tests.journeys.browser.device import LIMIT_MS
from tests.journeys.site.server import running_server

SLOW_MACHINE = 6
"""Times the patience of a journey: everything may be four times slower here."""


def main(arguments: Sequence[str] | None = None) -> None:
    """Print group after group."""
    asked = _asked(arguments)
    if chromium_path() is None:
        sys.exit(MISSING)
    expect.set_options(timeout=LIMIT_MS * SLOW_MACHINE)
    with TemporaryDirectory(prefix="bench-") as name, sync_playwright() as playwright:
        scratch = Path(name)
        state, build = prepared(scratch)
        with running_server(state, build, scratch) as server, started_browser(playwright) as (browser, process):
            bench = Bench(
                server=server,
                browser=browser,
                browser_process=process,
                loaded_state=state,
                build=build,
                scratch=scratch,
                runs=1 if asked.smoke else 5,
                many=1 if asked.smoke else 20,
                patients=10 if asked.smoke else 500,
                ledgers=(500, asked.longest or 2_000) if asked.smoke else (1_000, 100_000, asked.longest or 1_000_000),
                devices=4 if asked.smoke else 50,
                compared=asked.compared or (40 if asked.smoke else 5_000),
            )
            _say(_about(browser.version))
            for group in asked.groups or GROUPS:
                _say(heading(GROUPS[group].TITLE))
                for found in GROUPS[group].measure(bench):
                    _say(found if isinstance(found, str) else row(found))


def _say(line: str) -> None:
    """At once: a person waits."""
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


def _asked(arguments: Sequence[str] | None) -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.bench", description="Measures the product.")
    parser.add_argument("groups", nargs="*", choices=[*GROUPS, []], help=f"some of: {', '.join(GROUPS)}")
    parser.add_argument("--smoke", action="store_true", help="each once, to see that figures come out")
    parser.add_argument("--compared", type=int, help="records beside PouchDB and beside bare rows (5,000)")
    parser.add_argument("--longest", type=int, help="records of the longest ledger (1,000,000)")
    return parser.parse_args(arguments)


def _about(chromium: str) -> str:
    load = os.getloadavg()[0] if hasattr(os, "getloadavg") else float("nan")
    return f"{os.cpu_count()} cores, load {load:.1f}; Python {platform.python_version()}; Chromium {chromium}"


if __name__ == "__main__":
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "clinic.settings")
    main()
