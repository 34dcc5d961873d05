"""The newest release, as the build left it."""

from __future__ import annotations

import json
from functools import lru_cache

from clinic.build.folders import folders
from clinic.build.release import Release, release_from


class NotBuilt(RuntimeError):
    """There is no release to serve yet."""


def current_release() -> Release:
    """Reads the build's record again whenever it was replaced; raises NotBuilt."""
    path = folders().current
    try:
        stamp = path.stat()
    except FileNotFoundError as error:
        raise NotBuilt("The app is not built yet: run manage.py build.") from error
    return _read(str(path), stamp.st_mtime_ns, stamp.st_size)


@lru_cache(maxsize=2)
def _read(path: str, _written: int, _size: int) -> Release:
    with open(path, encoding="utf-8") as record:  # noqa: PTH123 - the path is a key of the cache
        return release_from(json.load(record))
