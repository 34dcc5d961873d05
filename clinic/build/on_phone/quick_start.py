"""Opens the planner's desk on the phone in half the time.

A dataclass writes the source of its methods and compiles it when its module is imported. On a phone that compiling is
more than half of what it takes to import the planner. The build therefore imports it once and keeps what was compiled,
by its source, beside this module (:func:`record`); the phone looks there first (:func:`desk`). A source that is not
there is compiled as ever, so nothing can be wrong, only slower.
"""

from __future__ import annotations

import builtins
import dataclasses
import importlib
import marshal
from collections.abc import Callable
from pathlib import Path
from types import CodeType, ModuleType
from typing import Any

KEPT = "quick_start.bin"

missed: list[str] = []
"""Sources that had to be compiled after all; a test holds it empty."""


def record() -> bytes:
    """What ``dataclasses`` compiles while the desk is imported, for a file named :data:`KEPT`."""
    kept: dict[str, CodeType] = {}

    def compile_source(source: str) -> CodeType:
        kept[source] = compile(source, "<string>", "exec", dont_inherit=True)
        return kept[source]

    _import_desk(compile_source)
    return marshal.dumps(kept)


def desk() -> ModuleType:
    """``planner.desk``, imported with what the build kept."""
    kept: dict[str, CodeType] = marshal.loads(Path(__file__).with_name(KEPT).read_bytes())  # noqa: S302 - our own file

    def kept_or_compiled(source: str) -> CodeType:
        if source not in kept:
            missed.append(source)
            kept[source] = compile(source, "<string>", "exec", dont_inherit=True)
        return kept[source]

    return _import_desk(kept_or_compiled)


def _import_desk(code_of: Callable[[str], CodeType]) -> ModuleType:
    def execute(source: str, *namespaces: Any) -> None:  # noqa: ANN401 - whatever dataclasses hands on
        builtins.exec(code_of(source), *namespaces)  # noqa: S102 - dataclasses' own source

    # A name of the module goes before the built-in one.
    dataclasses.exec = execute  # type: ignore[attr-defined]
    try:
        return importlib.import_module("planner.desk")
    finally:
        del dataclasses.exec  # type: ignore[attr-defined]
