"""What groups are called on a screen and on a page."""

from __future__ import annotations

from planner.anatomy import Muscle
from planner.audit.question import Question
from planner.results.grouping import Grouping
from planner.tables import tables

MUSCLES = frozenset(muscle.value.lower() for muscle in Muscle)


def group_words(asked: Question, name: str) -> str:
    """A group by its name."""
    match asked.by:
        case Grouping.ALL:
            return asked.clinic or "All operations"
        case Grouping.FAMILY:
            return family_words(name)
        case Grouping.TABLE:
            return table_words(name)
        case Grouping.SURGEON | Grouping.DIAGNOSIS:
            return name


def family_words(family: str) -> str:
    """``recess-both-mr`` as ``recess both MR``."""
    return " ".join(part.upper() if part in MUSCLES else part for part in family.split("-"))


def table_words(table: str) -> str:
    """The name of one of the engine's tables; a clinic's own goes by its id."""
    return next((each.stamp.name for each in tables() if each.stamp.id == table), table)
