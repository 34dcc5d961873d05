"""Names made from content: the same content gets the same name on every machine."""

from __future__ import annotations

import hashlib
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping

SHORT = 16


def content_name(contents: Mapping[str, bytes]) -> str:
    """The first 16 hexadecimal digits of SHA-256 over the names and contents, in the order of the names."""
    whole = hashlib.sha256()
    for name in sorted(contents):
        content = contents[name]
        whole.update(f"{name}\0{len(content)}\0".encode())
        whole.update(content)
    return whole.hexdigest()[:SHORT]
