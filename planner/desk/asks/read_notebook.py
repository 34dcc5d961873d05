"""A surgeon's old cases from a file: the dry run. Nothing is saved by it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from planner.codec import read, write
from planner.desk.fields import Fields
from planner.errors import Fault, Refused
from planner.exchange.notebook import read_notebook
from planner.limits import Length
from planner.records.notebook import Notebook


@dataclass(frozen=True, kw_only=True)
class Question:
    """``text``: whether it is one. ``held``: the notebooks that were carried over and not taken back."""

    text: bool

    title: Annotated[str, Length(1, 120)]
    surgeon_name: Annotated[str, Length(1, 120)]
    held: Annotated[tuple[Notebook, ...], Length(0, 40)] = ()


def ask(fields: Fields) -> object:
    """A ``NotebookReading``; the file's ``text`` is judged row by row and not by the codec."""
    text = fields.get("text")
    asked = read(Question, fields | ({"text": isinstance(text, str)} if "text" in fields else {}))
    if not isinstance(text, str):
        raise Refused(Fault(code="wrong_type", text="This is not the text of a file.", field="text", allowed="a text"))
    return write(read_notebook(text, title=asked.title, surgeon_name=asked.surgeon_name, held=asked.held))
