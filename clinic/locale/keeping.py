"""A catalogue brought up to the sources: new texts come in empty, texts that nobody speaks any more go."""

from __future__ import annotations

from typing import TYPE_CHECKING

import polib

if TYPE_CHECKING:
    from collections.abc import Iterable
    from pathlib import Path

    from clinic.locale.collecting import Spoken

WIDTH = 120


def bring_up(path: Path, spoken: Iterable[Spoken]) -> tuple[int, int]:
    """Write the catalogue anew, in the order of its texts; how many came and how many went."""
    old = polib.pofile(str(path), wrapwidth=WIDTH)
    known = {(entry.msgid, entry.msgid_plural): entry for entry in old}
    forms = int(old.metadata["Plural-Forms"].split(";")[0].removeprefix("nplurals="))
    new = polib.POFile(wrapwidth=WIDTH)
    new.metadata = old.metadata
    wanted = {(each.text, each.many): each for each in spoken}
    for key, each in wanted.items():
        entry = known.get(key) or polib.POEntry(
            msgid=each.text,
            msgid_plural=each.many,
            msgstr_plural=dict.fromkeys(range(forms), "") if each.many else {},
        )
        entry.occurrences = [(other.place, "") for other in spoken if (other.text, other.many) == key]
        new.append(entry)
    new.save(str(path))
    return len(wanted.keys() - known.keys()), len(known.keys() - wanted.keys())
