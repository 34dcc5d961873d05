"""Bundles into served folders; a folder that is there already is right, for its name says what went into it."""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

from clinic.build.bundles import source_archive
from clinic.build.node import run_node
from clinic.build.writing import whole_folder

if TYPE_CHECKING:
    from collections.abc import Sequence

    from clinic.build.bundles import Bundle

COMPILE = Path(__file__).resolve().with_name("compile.mjs")


def missing_bundles(bundles: Sequence[Bundle], engine: Path) -> tuple[Bundle, ...]:
    """Those that were never built from these sources with this compiler."""
    return tuple(bundle for bundle in bundles if not (engine / bundle.folder).is_dir())


def build_bundles(bundles: Sequence[Bundle], *, project: Path, engine: Path) -> None:
    """Compile and write the bundles into ``engine``; raises NodeFailed with the compiler's own words."""
    with tempfile.TemporaryDirectory() as name:
        scratch = Path(name)
        pairs = [(scratch / f"{bundle.name}.source.zip", scratch / f"{bundle.name}.zip") for bundle in bundles]
        for bundle, (source, _) in zip(bundles, pairs, strict=True):
            source.write_bytes(source_archive(bundle.sources))
        pyodide = project / "node_modules" / "pyodide"
        run_node(str(COMPILE), str(pyodide), *(str(path) for pair in pairs for path in pair), folder=project)
        for bundle, (_, compiled) in zip(bundles, pairs, strict=True):
            with whole_folder(engine / bundle.folder) as folder:
                for file, content in bundle.files.items():
                    (folder / file).write_bytes(content)
                (folder / bundle.archive).write_bytes(compiled.read_bytes())
