"""The page for developers names every kind of record, and no other."""

import re

from clinic.build.folders import folders
from clinic.sync.kinds import KINDS


def test_the_page_for_developers_names_every_kind():
    page = (folders().project / "DEVELOPERS.md").read_text(encoding="utf-8")
    (listed,) = re.findall(r"Kinds so far: ([^.]+)\.", page)

    assert sorted(re.findall(r"`([a-z_]+)`", listed)) == sorted(KINDS)
