"""One release of the app: every file of it under one folder named by version and content, which never changes again.

The name also covers what is served beside the folder and must fit it: the page, the service worker and the manifest.
"""

from __future__ import annotations

import json
import shutil
import tomllib
from dataclasses import asdict, dataclass
from typing import TYPE_CHECKING, Any

from clinic.build.bundles import Bundle
from clinic.build.digests import content_name
from clinic.build.stylesheet import one_stylesheet
from clinic.build.vendor import vendor_files
from clinic.build.writing import whole_folder, write_whole

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path

    from clinic.build.folders import Folders

KEPT_RELEASES = 5
"""A page that was opened under an earlier release still asks for its files."""

SERVICE_WORKER = "sw.js"
"""Lies in the release's folder, where the view that serves it at the root finds the one that fits."""

NOT_SERVED = (".d.ts", ".md")


@dataclass(frozen=True, kw_only=True)
class Release:
    """``shell``: the URLs that the app needs to open; ``engine``: those it needs to calculate, by bundle."""

    name: str
    version: str
    shell: tuple[str, ...]
    engine: Mapping[str, tuple[str, ...]]

    @property
    def root(self) -> str:
        """The URL of the release's folder."""
        return f"/static/app/{self.name}/"

    def text(self) -> bytes:
        """The release as a record on disk."""
        return json.dumps(asdict(self), indent=1, sort_keys=True).encode()


def release_from(record: Mapping[str, Any]) -> Release:
    """The release of a record that :meth:`Release.text` wrote."""
    return Release(
        name=record["name"],
        version=record["version"],
        shell=tuple(record["shell"]),
        engine={name: tuple(urls) for name, urls in record["engine"].items()},
    )


def app_files(project: Path) -> dict[str, bytes]:
    """The app's own files and its libraries by their place in the release."""
    source = project / "static" / "app"
    own = {
        path.relative_to(source).as_posix(): path.read_bytes()
        for path in sorted(source.rglob("*"))
        if path.is_file() and not path.name.endswith(NOT_SERVED) and not path.name.startswith(".")
    }
    return one_stylesheet(own) | vendor_files(project)


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
    named_by |= {"version": version.encode(), "engine": json.dumps(engine, sort_keys=True).encode()}
    name = f"{version}-{content_name(named_by)}"
    files["shell/release.js"] = _module(name, version, engine)
    icons = tuple(f"/icons/{path.name}" for path in sorted((project / "static" / "icons").iterdir()))
    shell = ("/", "/manifest.webmanifest", *icons, *(f"/static/app/{name}/{file}" for file in sorted(files)))
    files[SERVICE_WORKER] = (project / "static" / "sw.js").read_bytes()
    return Release(name=name, version=version, shell=shell, engine=engine), files


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
    if not folders.current.is_file() or folders.current.read_bytes() != release.text():
        write_whole(record, release.text())
        write_whole(folders.current, release.text())
    kept = sorted(folders.releases.glob("*.json"), key=lambda path: (path != record, -path.stat().st_mtime))
    for path in kept[KEPT_RELEASES:]:
        shutil.rmtree(folders.app / path.stem, ignore_errors=True)
        path.unlink()
    served = [release_from(json.loads(path.read_bytes())) for path in kept[:KEPT_RELEASES]]
    needed = {url.split("/")[3] for one in served for urls in one.engine.values() for url in urls}
    for place, names in ((folders.engine, needed), (folders.app, {one.name for one in served})):
        for folder in place.iterdir():
            if folder.name not in names:
                shutil.rmtree(folder, ignore_errors=True)


def _place(urls: Sequence[str]) -> dict[str, object]:
    folder = urls[0].rpartition("/")[0] + "/"
    return {"folder": folder, "files": [url.removeprefix(folder) for url in urls]}


def _module(name: str, version: str, engine: Mapping[str, Sequence[str]]) -> bytes:
    values = {"name": name, "version": version, "engine": {bundle: _place(urls) for bundle, urls in engine.items()}}
    text = json.dumps(values, indent=2, sort_keys=True)
    return f"// Written by the build.\nexport const release = {text};\n".encode()
