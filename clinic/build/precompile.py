"""Source into byte code, inside the phone's own Python: byte code fits one version of the interpreter only.

Docstrings and assertions are left out (optimisation level 2). The result is not compressed: HTTP compresses it better.
"""

from __future__ import annotations

import importlib
import marshal
import sys
import tempfile
import zipfile
from importlib.util import MAGIC_NUMBER, source_hash

QUICK_START = "quick_start"
HASHED_AND_UNCHECKED = (0b01).to_bytes(4, "little")


def precompile(source: str, compiled: str) -> None:
    """Write the archive ``compiled`` from ``source``: ``.py`` becomes ``.pyc``, other files stay as they are."""
    with zipfile.ZipFile(source) as before, zipfile.ZipFile(compiled, "w", zipfile.ZIP_STORED) as after:
        for name in before.namelist():
            content = before.read(name)
            if name.endswith(".py"):
                after.writestr(zipfile.ZipInfo(name + "c"), byte_code(name, content))
            else:
                after.writestr(zipfile.ZipInfo(name), content)
        if f"{QUICK_START}.py" in before.namelist():
            after.writestr(zipfile.ZipInfo(f"{QUICK_START}.bin"), _recorded(before))


def _recorded(archive: zipfile.ZipFile) -> bytes:
    """What :mod:`quick_start` of the archive wants to find beside itself."""
    with tempfile.TemporaryDirectory() as folder:
        archive.extractall(folder)
        sys.path.insert(0, folder)
        try:
            recorded: bytes = importlib.import_module(QUICK_START).record()
        finally:
            sys.path.remove(folder)
    return recorded


def byte_code(name: str, source: bytes) -> bytes:
    """A hash-based ``.pyc`` (PEP 552): it carries no time, and nobody compares it with a source that is not there."""
    code = compile(source, name, "exec", dont_inherit=True, optimize=2)
    return MAGIC_NUMBER + HASHED_AND_UNCHECKED + source_hash(source) + marshal.dumps(code)
