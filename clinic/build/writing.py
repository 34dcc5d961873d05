"""Whole or not at all: files and folders appear under their name only when they are finished."""

from __future__ import annotations

import os
import shutil
from contextlib import contextmanager
from typing import TYPE_CHECKING

from clinic.build.failure import BuildFailed

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

UNFINISHED = ".unfinished-"


class CannotWrite(BuildFailed):
    """A folder that must be written to cannot be."""


def require_writable(folder: Path) -> None:
    """Make the folder and try it out, before long work begins; raises CannotWrite."""
    try:
        write_whole(folder / f"{UNFINISHED}{os.getpid()}-trial", os.urandom(8))
    except OSError as error:
        raise CannotWrite(f"The folder {folder} cannot be written to ({error.strerror}).") from error


def write_whole(path: Path, content: bytes) -> None:
    """Write a file unless it is the same already; a reader sees the old content or the new, never a part."""
    if path.is_file() and path.read_bytes() == content:
        return
    path.parent.mkdir(parents=True, exist_ok=True)
    unfinished = path.with_name(f"{UNFINISHED}{os.getpid()}-{path.name}")
    unfinished.write_bytes(content)
    unfinished.replace(path)


@contextmanager
def whole_folder(path: Path) -> Iterator[Path]:
    """A new folder to fill; it gets its name when the block ends well, and vanishes when it does not."""
    path.parent.mkdir(parents=True, exist_ok=True)
    unfinished = path.with_name(f"{UNFINISHED}{os.getpid()}-{path.name}")
    shutil.rmtree(unfinished, ignore_errors=True)
    unfinished.mkdir()
    try:
        yield unfinished
        if path.exists():
            shutil.rmtree(path)
        unfinished.rename(path)
    finally:
        shutil.rmtree(unfinished, ignore_errors=True)


def clear_unfinished(folder: Path) -> None:
    """Remove what a builder that died has left, anywhere below ``folder``; call it with the lock held."""
    for path in list(folder.rglob(f"{UNFINISHED}*")):
        if path.is_dir():
            shutil.rmtree(path, ignore_errors=True)
        else:
            path.unlink(missing_ok=True)
