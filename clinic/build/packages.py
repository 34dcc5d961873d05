"""The npm packages: whole, or installed anew."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

from clinic.build.failure import BuildFailed
from clinic.build.node import NodeFailed, run_npm

if TYPE_CHECKING:
    from pathlib import Path


class PackagesMissing(BuildFailed):
    """The npm packages could not be installed."""


def missing_packages(project: Path) -> tuple[str, ...]:
    """The locked packages that are not installed at their locked version.

    npm writes ``node_modules/.package-lock.json`` last, so an interrupted install has none, and everything is missing.
    Packages for other platforms are optional and do not count.
    """
    locked = json.loads((project / "package-lock.json").read_text(encoding="utf-8"))["packages"]
    try:
        installed = json.loads((project / "node_modules/.package-lock.json").read_text(encoding="utf-8"))["packages"]
    except (OSError, ValueError, KeyError):
        installed = {}
    return tuple(
        place
        for place, package in locked.items()
        if place
        and not package.get("optional")
        and not (
            installed.get(place, {}).get("version") == package["version"]
            and (project / place / "package.json").is_file()
        )
    )


def install_packages(project: Path) -> None:
    """``npm ci``: exactly what the lock file says; clears what an interrupted run left. Raises PackagesMissing."""
    try:
        run_npm("ci", "--no-audit", "--no-fund", "--ignore-scripts", folder=project)
    except (NodeFailed, OSError) as error:
        raise PackagesMissing(f"npm could not install the packages:\n{error}") from error
    if missing := missing_packages(project):
        raise PackagesMissing(f"npm finished, but these are still missing: {', '.join(missing)}")
