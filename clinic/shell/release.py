"""The newest release, as the build left it."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from clinic.build.folders import folders
from clinic.build.release import Release, UnreadableRelease, read_release


class NotBuilt(RuntimeError):
    """There is no release to serve yet."""


def current_release() -> Release:
    """Reads the build's record again whenever it was replaced; raises NotBuilt."""
    path = folders().current
    try:
        stamp = path.stat()
        return _read(str(path), stamp.st_mtime_ns, stamp.st_size)
    except (FileNotFoundError, UnreadableRelease) as error:
        raise NotBuilt("The app is not built yet, or by another version: run manage.py build.") from error


@lru_cache(maxsize=2)
def _read(path: str, _written: int, _size: int) -> Release:
    return read_release(Path(path))
