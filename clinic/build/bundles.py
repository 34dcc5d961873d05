"""What the engine on the phone is made of: three bundles, each in a folder named by what went into it.

    runtime   the Python interpreter and its standard library, without what a calculation can never use
    planner   the engine itself
    pdf       ReportLab without fonts and charts; fetched into memory only when a page is asked for

A release of the app that changes the planner alone does not make a phone fetch the runtime again.
"""

from __future__ import annotations

import importlib.util
import io
import json
import tomllib
import zipfile
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from clinic.build.digests import content_name

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

HERE = Path(__file__).resolve().parent
COMPILER = ("compile.mjs", "precompile.py")

RUNTIME_FILES = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm")
RUNTIME_LOCK = "pyodide-lock.json"
ARCHIVES = {"runtime": "python_stdlib.zip", "planner": "planner.zip", "pdf": "pdf.zip"}
"""The runtime's files have the names that its loader looks for in its folder."""

TRIMMING = tomllib.loads((HERE / "trimming.toml").read_text(encoding="utf-8"))


@dataclass(frozen=True, kw_only=True)
class Bundle:
    """One folder of the engine: ``files`` are served as they are, ``sources`` are compiled into ``archive``."""

    name: str
    archive: str
    files: Mapping[str, bytes]
    sources: Mapping[str, bytes]

    @property
    def folder(self) -> str:
        """The folder's name: made of everything that decides its contents, the compiler included."""
        compiler = {f"compiler/{name}": (HERE / name).read_bytes() for name in COMPILER}
        files = {f"files/{name}": content for name, content in self.files.items()}
        return content_name(compiler | files | {f"sources/{name}": content for name, content in self.sources.items()})

    @property
    def served(self) -> tuple[str, ...]:
        """The names of the files in the folder, as they are listed in a release."""
        return (*sorted(self.files), self.archive)


def bundles(project: Path) -> tuple[Bundle, ...]:
    """The three bundles from the npm packages, the planner's source and the installed ReportLab."""
    return (_runtime(project / "node_modules" / "pyodide"), _planner(project / "planner"), _pdf())


def source_archive(sources: Mapping[str, bytes]) -> bytes:
    """The sources as one uncompressed zip, for the compiler to read."""
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w", zipfile.ZIP_STORED) as archive:
        for name in sorted(sources):
            archive.writestr(zipfile.ZipInfo(name), sources[name])
    return whole.getvalue()


def _runtime(pyodide: Path) -> Bundle:
    with zipfile.ZipFile(pyodide / "python_stdlib.zip") as library:
        sources = {name: library.read(name) for name in library.namelist() if _library_keeps(name)}
    files = {name: (pyodide / name).read_bytes() for name in RUNTIME_FILES}
    lock = json.loads((pyodide / RUNTIME_LOCK).read_text(encoding="utf-8"))
    files[RUNTIME_LOCK] = json.dumps({"info": lock["info"], "packages": {}}, sort_keys=True).encode()
    files["licence.txt"] = (HERE / "licences" / "runtime.txt").read_bytes()
    return Bundle(name="runtime", archive=ARCHIVES["runtime"], files=files, sources=sources)


def _library_keeps(name: str) -> bool:
    if name.startswith("encodings/"):
        return name.removeprefix("encodings/").removesuffix(".py") in TRIMMING["library"]["encodings_kept"]
    return name.endswith(".py") and not name.startswith(tuple(TRIMMING["library"]["left_out"]))


def _planner(folder: Path) -> Bundle:
    sources = {f"planner/{name}": content for name, content in _tree(folder)} | dict(_tree(HERE / "on_phone"))
    return Bundle(name="planner", archive=ARCHIVES["planner"], files={}, sources=sources)


def _pdf() -> Bundle:
    reportlab = Path(_location("reportlab"))
    sources = {
        f"reportlab/{name}": content
        for name, content in _tree(reportlab)
        if name.endswith(".py") and not name.startswith(tuple(TRIMMING["reportlab"]["left_out"]))
    }
    sources |= dict(_tree(HERE / "stand_in"))
    licence = (reportlab / "license.txt").read_bytes()
    return Bundle(name="pdf", archive=ARCHIVES["pdf"], files={"licence.txt": licence}, sources=sources)


def _location(package: str) -> str:
    found = importlib.util.find_spec(package)
    if found is None or found.origin is None:
        raise ModuleNotFoundError(f"{package} is not installed")
    return str(Path(found.origin).parent)


def _tree(folder: Path) -> Iterator[tuple[str, bytes]]:
    for path in sorted(folder.rglob("*")):
        if path.is_file() and "__pycache__" not in path.parts and path.suffix not in {".pyc", ".md"}:
            yield path.relative_to(folder).as_posix(), path.read_bytes()
