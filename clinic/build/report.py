"""What a phone downloads, file group by file group."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable
    from pathlib import Path

    from clinic.build.release import Release


@dataclass(frozen=True, kw_only=True)
class Size:
    """One line: how many files, and their bytes as they are, as brotli and as gzip."""

    what: str
    files: int
    raw: int
    brotli: int
    gzip: int


def sizes(release: Release, site: Path) -> tuple[Size, ...]:
    """The app shell, each engine bundle, and the sum; the page and the manifest are not files and not counted."""
    groups = {"app": [url for url in release.shell if url.startswith(("/static/", "/icons/"))]}
    groups |= {f"engine: {name}": list(urls) for name, urls in release.engine.items()}
    lines = [_size(what, (site / url.removeprefix("/") for url in urls)) for what, urls in groups.items()]
    total = Size(
        what="all",
        files=sum(line.files for line in lines),
        raw=sum(line.raw for line in lines),
        brotli=sum(line.brotli for line in lines),
        gzip=sum(line.gzip for line in lines),
    )
    return (*lines, total)


def table(lines: Iterable[Size]) -> str:
    """The sizes in kB (1,000 bytes), ready to print."""
    rows = [f"{'':<18}{'files':>6}{'raw kB':>10}{'gzip kB':>10}{'brotli kB':>11}"]
    return "\n".join([*rows, *(_row(line) for line in lines)])


def _row(size: Size) -> str:
    figures = f"{size.raw / 1000:>10,.1f}{size.gzip / 1000:>10,.1f}{size.brotli / 1000:>11,.1f}"
    return f"{size.what:<18}{size.files:>6}{figures}"


def _size(what: str, paths: Iterable[Path]) -> Size:
    whole = list(paths)
    return Size(
        what=what,
        files=len(whole),
        raw=sum(path.stat().st_size for path in whole),
        brotli=sum(_smallest(path, ".br") for path in whole),
        gzip=sum(_smallest(path, ".gz") for path in whole),
    )


def _smallest(path: Path, suffix: str) -> int:
    beside = path.with_name(path.name + suffix)
    return (beside if beside.is_file() else path).stat().st_size
