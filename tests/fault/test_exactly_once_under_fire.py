"""Whatever happens on the way: in the end every record is on the server and on every device, once, byte for byte.

A run's seed says what happens in it; see :mod:`tests.fault.run.drawing`.
"""

import traceback
from collections import Counter
from concurrent.futures import ThreadPoolExecutor

import pytest

from tests.fault.device.app.mixed import Mixed
from tests.fault.device.device import Device
from tests.fault.run.drawing import FIRSTS, Event, draw
from tests.fault.run.play import play
from tests.fault.site.places import PULLING, PUSHING

BLOCK = len(FIRSTS)
"""In each block everything has its turn."""
BLOCKS = 18


def pytest_generate_tests(metafunc):
    if "seeds" not in metafunc.fixturenames:
        return
    wanted = metafunc.config.getoption("--seed", default=None)
    first = metafunc.config.getoption("--seeds-from", default=0)
    last = first + (metafunc.config.getoption("--runs", default=None) or BLOCKS * BLOCK)
    blocks = [wanted] if wanted else [range(start, min(start + BLOCK, last)) for start in range(first, last, BLOCK)]
    metafunc.parametrize("seeds", blocks, ids=lambda seeds: f"{seeds[0]}-{seeds[-1]}")


def test_every_record_is_everywhere_exactly_once(seeds, sites, phones, happened):
    def work(place):
        return [(seed, *played(seed, sites[place], phones)) for seed in seeds[place :: len(sites)]]

    with ThreadPoolExecutor(len(sites)) as pool:
        runs = [run for done in pool.map(work, range(len(sites))) for run in done]
    for _, _, seen in runs:
        happened.update(seen)
    happened["runs"] += len(runs)

    failed = [told(seed, objections) for seed, objections, _ in runs if objections]
    assert not failed, "\n\n".join(failed)


def test_everything_that_can_go_wrong_has_gone_wrong(happened):
    """A bench under which nothing happens would prove nothing."""
    if happened["runs"] < BLOCK * 2:
        pytest.skip("too few runs to tell")
    places = [f"POST {place}" for place in PUSHING] + [f"GET {place}" for place in PULLING]
    kinds = {first[1].value for first in FIRSTS if isinstance(first, tuple)}
    wanted = [*kinds, *Event, *places, "status 503", "a parcel was opened", "parcel_differs"]

    rare = {what: happened[what] for what in wanted if happened[what] < happened["runs"] // BLOCK // 2}
    assert not rare, f"in {happened['runs']} runs {dict(happened)}"


def played(seed, site, phones):
    """A run that breaks off is one to object to, and says which it was."""
    drawn = draw(seed)
    try:
        return play(drawn, site, make=Mixed(phones, seed) if drawn.app else Device)
    except Exception:  # noqa: BLE001
        return [traceback.format_exc()], Counter()


def told(seed, objections):
    lines = "\n  ".join(objections)
    return f"seed {seed} ({draw(seed)}):\n  {lines}\nTo repeat it: uv run pytest tests/fault --seed {seed}"
