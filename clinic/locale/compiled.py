"""A catalogue as the server and the phone read it.

The phone's file: ``{"language", "name", "direction", "reviewed": null or {"by", "on"}, "plural", "texts"}``. ``texts``
is a translation, or the list of its plural forms, by the English text. ``plural`` has a digit for each number from 0 to
199, the form to take; a larger number takes the form of 100 more than what is left of it by 100. So the app needs to
evaluate no expression, which its content policy forbids; a language for which that does not hold fails the build.
"""

from __future__ import annotations

import gettext
import json
import re
from typing import TYPE_CHECKING

import polib
from django.utils.translation import get_language_info

if TYPE_CHECKING:
    from pathlib import Path

PLACE = "clinic/locale"
FILE = "LC_MESSAGES/django.po"
LISTED, CYCLE, TRIED = 200, 100, 2000


class CatalogueWrong(ValueError):
    """A catalogue that the phone could not use."""


def catalogue_files(project: Path) -> dict[str, Path]:
    """The catalogues by their language."""
    return {path.parts[-3]: path for path in sorted((project / PLACE).glob(f"*/{FILE}"))}


def for_the_phone(path: Path) -> bytes:
    """The JSON file of a catalogue; an entry without a translation is left out, and English stands there."""
    catalogue = polib.pofile(str(path))
    language = catalogue.metadata["Language"]
    told = get_language_info(language)
    texts: dict[str, str | list[str]] = {}
    for entry in catalogue.translated_entries():
        forms = [entry.msgstr_plural[number] for number in sorted(entry.msgstr_plural)]
        texts[entry.msgid] = forms or entry.msgstr
    value = {
        "language": language,
        "name": told["name_local"],
        "direction": "rtl" if told["bidi"] else "ltr",
        "reviewed": reviewed(catalogue),
        "plural": plural_digits(catalogue.metadata["Plural-Forms"]),
        "texts": texts,
    }
    return json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":")).encode()


def for_the_server(path: Path) -> bytes:
    """What gettext reads."""
    return polib.pofile(str(path)).to_binary()


def reviewed(catalogue: polib.POFile) -> dict[str, str] | None:
    """Who has reviewed the whole catalogue and when, or None."""
    by, on = (catalogue.metadata.get(name, "").strip() for name in ("X-Reviewed-By", "X-Reviewed-On"))
    return {"by": by, "on": on} if by and on else None


def plural_digits(header: str) -> str:
    """The form of each number from 0 to 199."""
    found = re.fullmatch(r"nplurals=(\d); plural=(.+?);?", header.strip())
    if not found:
        raise CatalogueWrong(f"Plural-Forms cannot be read: {header}")
    form = gettext.c2py(found[2])
    digits = "".join(str(form(number)) for number in range(LISTED))
    if any(form(number) != form(CYCLE + number % CYCLE) for number in range(LISTED, TRIED)):
        raise CatalogueWrong(f"Plural-Forms do not come round at {CYCLE}: {header}")
    return digits
