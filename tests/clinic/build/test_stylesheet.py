"""Every part keeps its own stylesheet; the phone gets one."""

from pathlib import Path

import pytest

from clinic.build.release import app_files
from clinic.build.stylesheet import StylesheetError, one_stylesheet

ENTRY = b'@layer base, parts;\n\n@import url("base.css") layer(base);\n@import url("../parts/a/a.css") layer(parts);\n'
FILES = {"style/app.css": ENTRY, "style/base.css": b"a {}\n", "parts/a/a.css": b".a {}\n", "main.js": b"0"}


def test_the_parts_are_written_into_the_entry_in_their_layers_and_their_order():
    files = one_stylesheet(FILES)

    assert files["style/app.css"] == b"@layer base, parts;\n\n@layer base {\na {}\n}\n@layer parts {\n.a {}\n}\n"
    assert set(files) == {"style/app.css", "main.js"}


def test_an_import_of_nothing_is_refused():
    with pytest.raises(StylesheetError, match=r"parts/b/b\.css, which does not exist"):
        one_stylesheet(FILES | {"style/app.css": b'@import url("../parts/b/b.css") layer(parts);\n'})


def test_an_import_written_in_another_way_is_refused():
    with pytest.raises(StylesheetError, match="Every import"):
        one_stylesheet(FILES | {"style/app.css": ENTRY + b"@import 'more.css';\n"})


def test_a_stylesheet_that_nobody_imports_is_refused():
    with pytest.raises(StylesheetError, match=r"does not import parts/c/c\.css"):
        one_stylesheet(FILES | {"parts/c/c.css": b""})


@pytest.mark.parametrize("content", [b'@import "x.css";', b"a { background: url(x.png) }"])
def test_a_stylesheet_that_refers_to_another_file_is_refused(content):
    with pytest.raises(StylesheetError, match="refers to another file"):
        one_stylesheet(FILES | {"style/base.css": content})


def test_the_app_has_one_stylesheet():
    files = app_files(Path(__file__).parents[3])

    assert [name for name in files if name.endswith(".css")] == ["style/app.css"]
