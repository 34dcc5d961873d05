"""ReportLab stays in its room, and what ships to the phone stays small."""

import ast
from pathlib import Path

import planner

ENGINE = Path(planner.__file__).parent
FONTS = ENGINE / "card" / "pdf" / "fonts"


def imported(module):
    for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module


def test_only_the_faces_the_painter_and_the_code_import_reportlab():
    importers = {
        module.relative_to(ENGINE).as_posix()
        for module in ENGINE.rglob("*.py")
        if any(name.split(".")[0] == "reportlab" for name in imported(module))
    }

    assert importers == {"card/pdf/faces.py", "card/pdf/paint.py", "card/pdf/qr.py"}


def test_the_typeface_ships_with_its_licence_and_is_cut_down():
    assert {file.name for file in FONTS.iterdir()} >= {"OFL.txt", "README.md"}
    assert "SIL OPEN FONT LICENSE" in (FONTS / "OFL.txt").read_text(encoding="utf-8")
    assert sum(file.stat().st_size for file in FONTS.glob("*.ttf")) < 250_000
