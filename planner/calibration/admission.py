"""Which past cases teach something about the dose, and why the others do not."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.limits import Length, Unique, Within
from planner.provenance import Mark, Provenance
from planner.records.plan import RecordId
from planner.values.statement import Statement


class Confounder(StrEnum):
    """What makes a result say something else than the dose."""

    REOPERATION = "operated again before the follow-up"
    EARLIER_OPERATION = "a horizontal muscle of either eye, or one of these muscles, was operated before"
    ADJUSTED = "the suture was moved afterwards"
    CHANGED_IN_THEATRE = "something else was done than planned"
    COMPLICATION = "a complication at the operation"
    PALSY_OR_RESTRICTION = "a palsy or a restriction"
    AIMED_AT_NEAR = "the dose was chosen for the deviation at near"


@dataclass(frozen=True, kw_only=True)
class PastCase:
    """One operation and its follow-up, prism dioptres: what the table promised to correct, and what was corrected.

    Both in the direction operated for; ``achieved_pd`` is negative when the deviation grew.
    """

    id: RecordId
    promised_pd: Annotated[float, Within(1, 200, "prism dioptres")]
    achieved_pd: Annotated[float, Within(-200, 300, "prism dioptres")]
    days_after: Annotated[int, Within(0, 20000, "days")]
    confounders: Annotated[tuple[Confounder, ...], Length(0, 7)] = ()

    @property
    def ratio(self) -> float:
        """The effect for each unit of what the table promised."""
        return self.achieved_pd / self.promised_pd


@dataclass(frozen=True, kw_only=True)
class Window:
    """The follow-up that counts, in days after the operation; the defaults are a house rule."""

    first_days: Annotated[int, Within(1, 3650, "days")] = 28
    last_days: Annotated[int, Within(1, 3650, "days")] = 120


@dataclass(frozen=True, kw_only=True)
class Question:
    """The cases of one family, and the follow-up that counts."""

    family: Annotated[str, Length(1, 80)]
    cases: Annotated[tuple[PastCase, ...], Length(0, 20000), Unique(("id",))]
    window: Window = Window()


ADMISSION = Provenance(
    mark=Mark.HOUSE_RULE, source="a case teaches if its follow-up lies in the window and nothing else explains it"
)


def admitted(question: Question) -> tuple[PastCase, ...]:
    """The cases that teach, in the order given."""
    return tuple(case for case in question.cases if not any(hindrances(case, question.window)))


def hindrances(case: PastCase, window: Window) -> Iterator[str]:
    """Why a case does not teach, in words; nothing where it does."""
    if not window.first_days <= case.days_after <= window.last_days:
        yield f"followed up after {case.days_after} days, outside {window.first_days} to {window.last_days}"
    yield from case.confounders


def counted(window: Window) -> Statement:
    """Which follow-up counts."""
    return Statement(
        code="calibration_window",
        text=f"Counted is the last measured visit {window.first_days} to {window.last_days} days after the operation.",
        provenance=ADMISSION,
        facts={"first_days": window.first_days, "last_days": window.last_days},
    )


def left_out(question: Question) -> Iterator[Statement]:
    """One sentence for each reason, with how many cases it concerns."""
    counts: dict[str, int] = {}
    for case in question.cases:
        for reason in hindrances(case, question.window):
            kind = "follow-up outside the window" if reason.startswith("followed up") else reason
            counts[kind] = counts.get(kind, 0) + 1
    for reason in sorted(counts):
        yield Statement(
            code="case_left_out",
            text=f"Left out, {counts[reason]}: {reason}.",
            provenance=ADMISSION,
            facts={"reason": reason, "cases": counts[reason]},
        )
