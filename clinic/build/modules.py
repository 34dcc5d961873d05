"""Which modules the page needs before it can start: named there, they come side by side, not one by one."""

from __future__ import annotations

import posixpath
import re
from typing import TYPE_CHECKING

from clinic.build.failure import BuildFailed

if TYPE_CHECKING:
    from collections.abc import Mapping

ENTRY = "main.js"
STATIC_IMPORT = re.compile(r"""^(?:import|export)\b[^'"();]*?['"](?P<module>\.{1,2}/[^'"]+)['"]""", re.MULTILINE)


class ModuleMissing(BuildFailed):
    """A module imports one that does not exist: the page would stay empty."""


def needed_at_start(files: Mapping[str, bytes]) -> tuple[str, ...]:
    """``main.js`` and all that it imports statically, directly or not, in the order in which they are met."""
    found = {ENTRY: None}
    waiting = [ENTRY] if ENTRY in files else []
    while waiting:
        name = waiting.pop(0)
        for match in STATIC_IMPORT.finditer(files[name].decode()):
            module = posixpath.normpath(posixpath.join(posixpath.dirname(name), match["module"]))
            if module not in files:
                raise ModuleMissing(f"{name} imports {match['module']}, which does not exist.")
            if module not in found:
                found[module] = None
                waiting.append(module)
    return tuple(found)
