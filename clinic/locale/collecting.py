"""What there is to translate, found in the sources.

A text is a literal wherever it is spoken; a call with anything else in its place is :class:`NotALiteral`, for its words
would never reach a translator.
"""

from __future__ import annotations

import ast
import json
import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

JS_SPEAKS = re.compile(r"/(?:say|speaker)\.js")
JS_CALL = re.compile(r"(?<![\w.])(?P<name>say|sayCount|sayHere|marked)\(")
JS_LITERAL = re.compile(r"""\s*(?:'(?P<single>(?:[^'\\\n]|\\.)*)'|"(?P<double>(?:[^"\\\n]|\\.)*)")\s*(?=[,)])""")
PYTHON_CALLS = {"says", "gettext", "gettext_lazy"}
MECHANISM = ("static/app/words/say.js", "static/app/words/speaker.js")
"""Where the calls are defined."""


class NotALiteral(ValueError):
    """A call whose text is made up where it stands."""


@dataclass(frozen=True, order=True)
class Spoken:
    """A text, its plural where it has one, and the file in which it stands."""

    text: str
    many: str
    place: str


def collect(project: Path) -> list[Spoken]:
    """Everything that is spoken, by the text."""
    return sorted({*_app(project), *_python(project, "planner/counselling"), *_python(project, "clinic")})


def _app(project: Path) -> Iterator[Spoken]:
    for path in sorted((project / "static" / "app").rglob("*.js")):
        place = path.relative_to(project).as_posix()
        if place in MECHANISM or "/vendor/" in place:
            continue
        source = path.read_text(encoding="utf-8")
        if not JS_SPEAKS.search(source):
            continue
        for call in JS_CALL.finditer(source):
            text, end = _literal(source, call.end(), place)
            many = _literal(source, end + 1, place)[0] if call["name"] == "sayCount" else ""
            yield Spoken(text, many, place)


def _literal(source: str, start: int, place: str) -> tuple[str, int]:
    """The text of the literal there, and where it ends."""
    found = JS_LITERAL.match(source, start)
    if not found:
        raise NotALiteral(f"{place}: {source[max(0, start - 12) : start + 50]!r}")
    inner = found["double"] if found["single"] is None else found["single"].replace("\\'", "'").replace('"', '\\"')
    return json.loads(f'"{inner}"'), found.end()


def _python(project: Path, folder: str) -> Iterator[Spoken]:
    for path in sorted((project / folder).rglob("*.py")):
        place = path.relative_to(project).as_posix()
        source = path.read_text(encoding="utf-8")
        if not any(f"{name}(" in source for name in PYTHON_CALLS):
            continue
        for node in ast.walk(ast.parse(source)):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in PYTHON_CALLS:
                first = node.args[0] if node.args else None
                if not (isinstance(first, ast.Constant) and isinstance(first.value, str)):
                    raise NotALiteral(f"{place}, line {node.lineno}")
                yield Spoken(first.value, "", place)
