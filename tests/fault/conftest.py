"""The fault bench: the real server and devices of the protocol, under fire, and afterwards every record exactly once.

    site/       the server: the production application in a process that is killed -9 and started again in milliseconds
    line/       the line between: HTTP over a socket of its own, and what may happen to a call on its way
    device/     a device that keeps the protocol of :mod:`clinic.sync.protocol`, in Python, and may die at any step;
    device/app/ the app's own code in its place, run by Node: its calls go over the same line
    run/        a run: what a seed says, who writes what, a few rounds under fire, fair weather, and the reckoning

A seed says everything that is drawn. Devices that work at the same time meet the server as the machine has it that day,
so a repeated run is the same in what happens to it, and not to the microsecond::

    uv run pytest tests/fault --seed 17 --seed 23
    uv run pytest tests/fault --runs 5000
    uv run pytest tests/fault --seeds-from 10000 --runs 60
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

import pytest

from tests.fault.device.app.phones import Phones, new_phones
from tests.fault.site.site import Site, new_sites

SITES = 2
"""As many runs go on at the same time, each on a site of its own."""


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--seed", type=int, action="append", help="of the fault bench: this run, and no other")
    parser.addoption("--seeds-from", type=int, default=0, help="of the fault bench: the first run's seed")
    parser.addoption("--runs", type=int, help="of the fault bench: how many runs there are")


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """What looks back on all runs comes after them, in whichever order they go."""
    items.sort(key=lambda item: {"happened", "seeds"} & set(getattr(item, "fixturenames", ())) == {"happened"})


@pytest.fixture(scope="session")
def sites() -> Iterator[list[Site]]:
    with new_sites(SITES) as sites:
        yield sites


@pytest.fixture(scope="session")
def phones() -> Iterator[Phones]:
    with new_phones() as phones:
        yield phones


@pytest.fixture(scope="session")
def happened() -> Counter[str]:
    """What has happened in all runs together, and ``runs``."""
    return Counter()
