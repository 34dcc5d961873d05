"""Everything the engine says about a case."""

from __future__ import annotations

from dataclasses import dataclass

from planner.provenance import Provenance
from planner.records.examination import Reading
from planner.values.option import Option
from planner.values.statement import Notice, Statement


@dataclass(frozen=True, kw_only=True)
class TableStamp:
    """Which dose table was used; ``caution`` repeats the table's own words of warning."""

    id: str
    name: str
    provenance: Provenance
    caution: str


@dataclass(frozen=True, kw_only=True)
class Target:
    """The deviation that the options answer (eso +) and the reading it was taken from."""

    horizontal_pd: float
    reading: Reading


@dataclass(frozen=True, kw_only=True)
class Proposal:
    """Output of the engine, schema 1. ``options`` stand best first; ``notices`` concern the whole case."""

    schema: int
    engine_version: str
    table: TableStamp
    target: Target
    findings: tuple[Statement, ...]
    options: tuple[Option, ...]
    notices: tuple[Notice, ...]
    disclaimer: str
