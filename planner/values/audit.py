"""An audit as a value: what the screen shows and the pages print."""

from __future__ import annotations

from dataclasses import dataclass

from planner.provenance import Provenance
from planner.values.picture import Picture
from planner.values.statement import Notice, Statement


@dataclass(frozen=True, kw_only=True)
class Figures:
    """A table of figures in words, one row per line."""

    title: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, kw_only=True)
class Told:
    """A figure by name; ``note`` says what it stands on."""

    label: str
    words: str
    note: str = ""


@dataclass(frozen=True, kw_only=True)
class Judged:
    """Success by one definition. ``extremes`` says what the missing could make of it, "" where nobody is missing."""

    id: str
    definition: str
    share_words: str
    interval_words: str
    counts_words: str
    extremes: str
    provenance: Provenance


@dataclass(frozen=True, kw_only=True)
class Charted:
    """A chart, null where there is nothing to draw, with what can be read in it, and its figures."""

    code: str
    title: str
    picture: Picture | None
    says: tuple[str, ...]
    figures: Figures


@dataclass(frozen=True, kw_only=True)
class GroupLine:
    """A group in one line; ``own`` is that of whoever asks. It is asked for by ``name`` and shown as ``words``."""

    name: str
    words: str
    own: bool
    cases: int
    few: bool
    success_words: str


@dataclass(frozen=True, kw_only=True)
class GroupAudit:
    """A group in full."""

    name: str
    words: str
    own: bool
    cases: int
    notices: tuple[Notice, ...]
    numbers: tuple[Told, ...]
    judged: tuple[Judged, ...]
    charts: tuple[Charted, ...]
    mix: tuple[Figures, ...]


@dataclass(frozen=True, kw_only=True)
class Audit:
    """Every group in a line, and those asked for in full; ``rules`` say how all of it was counted."""

    by_words: str
    window_words: str
    cases: int
    lines: tuple[GroupLine, ...]
    groups: tuple[GroupAudit, ...]
    notices: tuple[Notice, ...]
    rules: tuple[Statement, ...]
    engine_version: str
    disclaimer: str
