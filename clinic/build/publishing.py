"""A release into its place, and made the current one; earlier ones stay for a while."""

from __future__ import annotations

import shutil
from typing import TYPE_CHECKING

from clinic.build.release import UnreadableRelease, read_release
from clinic.build.writing import whole_folder, write_whole

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from clinic.build.folders import Folders
    from clinic.build.release import Release

KEPT_RELEASES = 5
"""A page that was opened under an earlier release still asks for its files."""


def write_release(release: Release, files: Mapping[str, bytes], folders: Folders) -> None:
    """Put the release in its place; nothing points to it yet."""
    if not (folders.app / release.name).is_dir():
        with whole_folder(folders.app / release.name) as folder:
            for name, content in files.items():
                path = folder / name
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_bytes(content)
    for path in sorted((folders.project / "static" / "icons").iterdir()):
        write_whole(folders.icons / path.name, path.read_bytes())


def publish(release: Release, folders: Folders) -> None:
    """Make it the current one, and take away releases and engine bundles that none of the newest needs."""
    record = folders.releases / f"{release.name}.json"
    write_whole(record, release.text())
    record.touch()
    write_whole(folders.current, release.text())
    _take_away(folders, keeping=_newest(folders.releases))


def _newest(records: Path) -> list[Release]:
    """The releases that stay; records of others, and those of another version of the build, go."""
    kept: list[Release] = []
    for path in sorted(records.glob("*.json"), key=lambda path: path.stat().st_mtime_ns, reverse=True):
        try:
            release = read_release(path)
        except (UnreadableRelease, ValueError):
            path.unlink()
            continue
        if len(kept) < KEPT_RELEASES:
            kept.append(release)
        else:
            path.unlink()
    return kept


def _take_away(folders: Folders, *, keeping: list[Release]) -> None:
    bundles = {url.split("/")[3] for release in keeping for urls in release.engine.values() for url in urls}
    for place, names in ((folders.app, {release.name for release in keeping}), (folders.engine, bundles)):
        for folder in place.iterdir():
            if folder.name not in names:
                shutil.rmtree(folder, ignore_errors=True)
