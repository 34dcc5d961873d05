"""Source into byte code, inside the phone's own Python: byte code fits one version of the interpreter only.

Docstrings and assertions are left out (optimisation level 2). The result is not compressed: HTTP compresses it better.
"""

from __future__ import annotations

import marshal
import zipfile
from importlib.util import MAGIC_NUMBER, source_hash

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


def byte_code(name: str, source: bytes) -> bytes:
    """A hash-based ``.pyc`` (PEP 552): it carries no time, and nobody compares it with a source that is not there."""
    code = compile(source, name, "exec", dont_inherit=True, optimize=2)
    return MAGIC_NUMBER + HASHED_AND_UNCHECKED + source_hash(source) + marshal.dumps(code)
