"""brotli and gzip beside every served file, done once for each content."""

from __future__ import annotations

import gzip
import hashlib
from concurrent.futures import ThreadPoolExecutor
from typing import TYPE_CHECKING

import brotli

from clinic.build.writing import write_whole

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from pathlib import Path

SMALLEST = 200
ALREADY_COMPRESSED = frozenset({".png", ".br", ".gz"})
PIECE = 512 * 1024
BEST = 11
"""Of brotli's qualities."""


def uncompressed(folder: Path) -> tuple[Path, ...]:
    """The files below ``folder`` that still lack a compressed form beside them, largest first."""
    files = (path for path in folder.rglob("*") if path.is_file() and path.suffix not in ALREADY_COMPRESSED)
    lacking = (path for path in files if path.stat().st_size > SMALLEST and not all(p.exists() for p in _beside(path)))
    return tuple(sorted(lacking, key=lambda path: path.stat().st_size, reverse=True))


def compress(files: Sequence[Path], remembered: Path, *, progress: Callable[[int], None], quality: int = BEST) -> None:
    """Write the compressed forms; ``progress`` gets the bytes compressed since its last call, from several threads."""
    with ThreadPoolExecutor(max_workers=2) as pool:
        for done in [pool.submit(_compress_file, path, remembered, progress, quality) for path in files]:
            done.result()


def forget(remembered: Path, served: Path) -> None:
    """Drop remembered forms that belong to no file below ``served`` any more."""
    files = (path for path in served.rglob("*") if path.is_file() and path.suffix not in ALREADY_COMPRESSED)
    current = {_key(path.read_bytes()) for path in files}
    for path in remembered.glob("*"):
        if path.stem not in current:
            path.unlink()


def _compress_file(path: Path, remembered: Path, progress: Callable[[int], None], quality: int) -> None:
    content = path.read_bytes()
    for beside, encode in zip(_beside(path), (_brotli, _gzip), strict=True):
        kept = remembered / f"{_key(content)}{beside.suffix}"
        if not kept.is_file():
            write_whole(kept, encode(content, progress, quality))
        write_whole(beside, kept.read_bytes())


def _brotli(content: bytes, progress: Callable[[int], None], quality: int) -> bytes:
    compressor = brotli.Compressor(quality=quality, lgwin=24)
    parts = []
    for start in range(0, len(content), PIECE):
        piece = content[start : start + PIECE]
        parts.append(compressor.process(piece))
        progress(len(piece))
    return b"".join([*parts, compressor.finish()])


def _gzip(content: bytes, _progress: Callable[[int], None], _quality: int) -> bytes:
    return gzip.compress(content, mtime=0)


def _beside(path: Path) -> tuple[Path, Path]:
    return (path.with_name(f"{path.name}.br"), path.with_name(f"{path.name}.gz"))


def _key(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()
