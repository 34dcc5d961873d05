"""One release of the app: every file of it under one folder named by version and content, which never changes again.

The name also covers what is served beside the folder and must fit it: the page, the service worker and the manifest.
"""

from __future__ import annotations

import json
import tomllib
from dataclasses import asdict, dataclass, fields
from typing import TYPE_CHECKING

from clinic.build.bundles import Bundle
from clinic.build.digests import content_name
from clinic.build.failure import BuildFailed
from clinic.build.modules import needed_at_start
from clinic.build.stylesheet import one_stylesheet
from clinic.build.vendor import vendor_files
from clinic.locale.compiled import catalogue_files, for_the_phone

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path

SERVICE_WORKER = "sw.js"
"""Lies in the release's folder, where the view that serves it at the root finds the one that fits."""

NOT_SERVED = (".d.ts", ".md")


class UnreadableRelease(BuildFailed):
    """A record that this version did not write."""


@dataclass(frozen=True, kw_only=True)
class Release:
    """One release, by its URLs.

    ``shell``: what the app needs to open; ``start``: the modules among it that the page needs at once; ``engine``: what
    it needs to calculate, by bundle.
    """

    name: str
    version: str
    shell: tuple[str, ...]
    start: tuple[str, ...]
    engine: Mapping[str, tuple[str, ...]]

    @property
    def root(self) -> str:
        """The URL of the release's folder."""
        return f"/static/app/{self.name}/"

    def text(self) -> bytes:
        """The release as a record on disk."""
        return json.dumps(asdict(self), indent=1, sort_keys=True).encode()


def read_release(path: Path) -> Release:
    """The release of a record that :meth:`Release.text` wrote; UnreadableRelease if another version wrote it."""
    record = json.loads(path.read_bytes())
    if set(record) != {field.name for field in fields(Release)}:
        raise UnreadableRelease(f"{path} was written by another version of the build.")
    return Release(
        name=record["name"],
        version=record["version"],
        shell=tuple(record["shell"]),
        start=tuple(record["start"]),
        engine={name: tuple(urls) for name, urls in record["engine"].items()},
    )


def app_files(project: Path) -> dict[str, bytes]:
    """The app's own files, its libraries and its catalogues by their place in the release."""
    source = project / "static" / "app"
    own = {
        path.relative_to(source).as_posix(): path.read_bytes()
        for path in sorted(source.rglob("*"))
        if path.is_file() and not path.name.endswith(NOT_SERVED) and not path.name.startswith(".")
    }
    words = {
        f"words/catalogues/{language}.json": for_the_phone(path) for language, path in catalogue_files(project).items()
    }
    return one_stylesheet(own) | vendor_files(project) | words


def beside_files(project: Path) -> dict[str, bytes]:
    """What belongs to a release without lying in its folder."""
    folders = (project / "clinic" / "shell", project / "static" / "icons")
    places = [project / "static" / "sw.js", *(path for folder in folders for path in sorted(folder.rglob("*")))]
    return {
        path.relative_to(project).as_posix(): path.read_bytes()
        for path in places
        if path.is_file() and "__pycache__" not in path.parts
    }


def plan_release(project: Path, bundles: Sequence[Bundle]) -> tuple[Release, dict[str, bytes]]:
    """The release of the present tree, and the contents of its folder."""
    version = tomllib.loads((project / "pyproject.toml").read_text(encoding="utf-8"))["project"]["version"]
    files = app_files(project)
    engine = {
        bundle.name: tuple(f"/static/engine/{bundle.folder}/{name}" for name in bundle.served) for bundle in bundles
    }
    named_by = {f"app/{name}": content for name, content in files.items()}
    named_by |= {f"beside/{name}": content for name, content in beside_files(project).items()}
    named_by["release.js"] = _module("", version, engine)
    name = f"{version}-{content_name(named_by)}"
    files["shell/release.js"] = _module(name, version, engine)
    icons = tuple(f"/icons/{path.name}" for path in sorted((project / "static" / "icons").iterdir()))
    start = tuple(f"/static/app/{name}/{file}" for file in needed_at_start(files))
    shell = ("/", "/manifest.webmanifest", *icons, *(f"/static/app/{name}/{file}" for file in sorted(files)))
    files[SERVICE_WORKER] = (project / "static" / "sw.js").read_bytes()
    return Release(name=name, version=version, shell=shell, start=start, engine=engine), files


def _place(urls: Sequence[str]) -> dict[str, object]:
    folder = urls[0].rpartition("/")[0] + "/"
    return {"folder": folder, "files": [url.removeprefix(folder) for url in urls]}


def _module(name: str, version: str, engine: Mapping[str, Sequence[str]]) -> bytes:
    values = {"name": name, "version": version, "engine": {bundle: _place(urls) for bundle, urls in engine.items()}}
    text = json.dumps(values, indent=2, sort_keys=True)
    return f"// Written by the build.\nexport const release = {text};\n".encode()
