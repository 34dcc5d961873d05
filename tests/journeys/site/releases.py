"""Releases for a journey to deploy: the present tree's, and ones in which something is changed."""

import io
import os
import shutil
from pathlib import Path

from clinic.build.building import build
from clinic.build.folders import Folders, folders
from clinic.build.release import Release
from clinic.build.steps import Steps

LINKED = ("node_modules", "planner", "static", "clinic/shell")
COPIED = ("pyproject.toml", "package.json", "package-lock.json")
QUICK = 5
"""A release that is fetched once or twice is not worth the seconds of the best compression."""


def copy_build(build_folder: Path, copy: Path) -> Path:
    """A build folder of one's own: what is deployed elsewhere meanwhile does not offer itself as an update here."""
    shutil.copytree(build_folder, copy, ignore=shutil.ignore_patterns("lock", ".unfinished-*"), copy_function=_link)
    return copy


def altered_tree(folder: Path, *, copying: str) -> Path:
    """The project in ``folder`` by links, with ``copying`` (a part or a file) as a copy that may be changed."""
    original = folders().project
    for name in {*LINKED, *COPIED} - {copying}:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).symlink_to(original / name, target_is_directory=(original / name).is_dir())
    if (original / copying).is_dir():
        shutil.copytree(original / copying, folder / copying, ignore=shutil.ignore_patterns("__pycache__"))
    else:
        shutil.copy(original / copying, folder / copying)
    return folder


def deploy(project: Path, build_folder: Path) -> Release:
    """Build the tree in ``project`` into ``build_folder``; who serves that gives out the new release at once."""
    return build(Folders(project=project, build=build_folder), Steps(io.StringIO()), quality=QUICK)


def _link(source: str, target: str) -> None:
    """The build replaces files and never writes into one, so a hard link is as good as a copy, where one can be."""
    try:
        os.link(source, target)
    except OSError:
        shutil.copy2(source, target)
