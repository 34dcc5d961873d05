"""Everything the engine says about a case."""

from __future__ import annotations

from dataclasses import dataclass

from planner.precision.agreement import Agreement
from planner.records.case import Aim
from planner.records.examination import Correction, Gaze, Range, Reading
from planner.records.technique import Condition
from planner.values.option import Option
from planner.values.principle import Principle
from planner.values.statement import Finding, Notice, Statement
from planner.values.table_stamp import TableStamp


@dataclass(frozen=True, kw_only=True)
class Target:
    """The deviation that the options answer (eso +, right hyper +) and the reading it was taken from.

    ``horizontal_pd`` and ``vertical_pd`` are corrected for the way they were read, ``raw_pd`` is the horizontal as it
    was read. ``horizontal_pd`` is 0 where there is none to operate for, ``vertical_pd`` None where it was not measured.
    ``steps`` say why this reading and how it became this figure; ``limits_pd`` are its 95 % limits of agreement.
    ``agreement`` is None for a single reading. An option repeats the ``notices``, for there they are acknowledged.
    """

    horizontal_pd: float
    raw_pd: float
    vertical_pd: float | None
    reading: Reading
    aim: Aim
    steps: tuple[Statement, ...]
    limits_pd: float
    agreement: Agreement | None
    notices: tuple[Notice, ...]


@dataclass(frozen=True, kw_only=True)
class Measure:
    """One direction of a measured position: as read, corrected, its 95 % limits, of how many readings, and how."""

    raw_pd: float
    corrected_pd: float
    limits_pd: float
    readings: int
    steps: tuple[Statement, ...]


@dataclass(frozen=True, kw_only=True)
class Measured:
    """A position as it counts, repeats settled; a direction is None where it was not measured."""

    gaze: Gaze
    range: Range
    correction: Correction
    condition: Condition
    horizontal: Measure | None
    vertical: Measure | None


@dataclass(frozen=True, kw_only=True)
class Proposal:
    """Output of the engine, schema 1. ``options`` stand best first; ``notices`` concern the whole case.

    ``additions`` answer what is not horizontal; ``combined`` is what the case combines, if it names two options or
    more. ``principles`` say what holds where standard doses do not.
    """

    schema: int
    engine_version: str
    table: TableStamp
    target: Target
    measured: tuple[Measured, ...]
    findings: tuple[Finding, ...]
    options: tuple[Option, ...]
    notices: tuple[Notice, ...]
    disclaimer: str
    additions: tuple[Option, ...] = ()
    combined: Option | None = None
    principles: tuple[Principle, ...] = ()

    @property
    def all_options(self) -> tuple[Option, ...]:
        """Everything that a plan can be made of."""
        return (*self.options, *self.additions, *((self.combined,) if self.combined else ()))
