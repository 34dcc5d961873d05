"""What a phone fetches once."""

from __future__ import annotations

from collections.abc import Iterator

from clinic.build.release import read_release
from clinic.build.report import sizes
from tests.bench.bench import Bench
from tests.bench.figure import Figure

TITLE = "Download, compressed (brotli)"
AIM_KB = 6_000


def measure(bench: Bench) -> Iterator[Figure]:
    release = read_release(bench.build / "release.json")
    for size in sizes(release, bench.build / "site"):
        aim = AIM_KB if size.what == "all" else None
        yield Figure(what=f"{size.what}, {size.files} files", unit="kB", values=[size.brotli / 1000], aim=aim)
