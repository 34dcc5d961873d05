"""A case, answered."""

from __future__ import annotations

from dataclasses import dataclass

from planner import proposal
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.records.case import Case


@dataclass(frozen=True, kw_only=True)
class Proposing:
    """A case to be answered."""

    case: Case


def ask(fields: Fields) -> object:
    """A ``Proposal``."""
    return write(proposal.propose(read(Proposing, fields).case))
