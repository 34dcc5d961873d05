"""The days after an operation at which a result is looked for."""

from __future__ import annotations

from dataclasses import dataclass

from planner.results.result import Result, Seen


@dataclass(frozen=True, kw_only=True)
class Window:
    """From ``first_days`` to ``last_days`` after the operation, both included."""

    first_days: int
    last_days: int

    def visits(self, result: Result) -> list[Seen]:
        """Those in the window, in order; what was seen after another operation is not this one's result."""
        again = result.reoperated_days
        end = self.last_days if again is None else min(self.last_days, again)
        inside = [visit for visit in result.seen if self.first_days <= visit.days_after <= end]
        return sorted(inside, key=lambda visit: visit.days_after)

    def last_visit(self, result: Result) -> Seen | None:
        """The one that counts."""
        visits = self.visits(result)
        return visits[-1] if visits else None

    def was_reoperated(self, result: Result) -> bool:
        """Somebody operated again by the last day, be it before the first, and whatever a visit had found."""
        return result.reoperated_days is not None and result.reoperated_days <= self.last_days
