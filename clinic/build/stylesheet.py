"""One stylesheet instead of one for each part and screen: the page is not drawn before the last of them has arrived."""

from __future__ import annotations

import posixpath
import re
from typing import TYPE_CHECKING

from clinic.build.failure import BuildFailed

if TYPE_CHECKING:
    from collections.abc import Mapping

ENTRY = "style/app.css"
IMPORT = re.compile(r'^@import url\("(?P<url>[^"]+)"\) layer\((?P<layer>\w+)\);$', re.MULTILINE)


class StylesheetError(BuildFailed):
    """The app's stylesheet asks for what is not there, or in a way that cannot be put into one file."""


def one_stylesheet(files: Mapping[str, bytes]) -> dict[str, bytes]:
    """The files with every stylesheet that ``style/app.css`` imports written into it, in its layer and place.

    A browser that got the files as they stand would draw the same page, later.
    """
    if ENTRY not in files:
        return dict(files)
    taken: list[str] = []

    def written_in(found: re.Match[str]) -> str:
        place = posixpath.normpath(posixpath.join(posixpath.dirname(ENTRY), found["url"]))
        if place not in files:
            raise StylesheetError(f"{ENTRY} imports {found['url']}, which does not exist.")
        content = files[place].decode()
        if "@import" in content or "url(" in content:
            raise StylesheetError(f"{place} refers to another file, which only {ENTRY} may.")
        taken.append(place)
        return f"@layer {found['layer']} {{\n{content}}}"

    text = IMPORT.sub(written_in, files[ENTRY].decode())
    if "@import" in text:
        raise StylesheetError(f'Every import in {ENTRY} reads @import url("...") layer(...);')
    forgotten = [name for name in files if name.endswith(".css") and name != ENTRY and name not in taken]
    if forgotten:
        raise StylesheetError(f"{ENTRY} does not import {', '.join(forgotten)}.")
    return {name: content for name, content in files.items() if name not in taken} | {ENTRY: text.encode()}
