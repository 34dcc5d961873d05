"""Definitions of success, each in a module of its own with its source; ``verdict`` is what they answer."""

from planner.results.definitions import pedig_exotropia_adapted, within_8, within_10
from planner.results.definitions.definition import Definition
from planner.results.definitions.verdict import Verdict

DEFINITIONS: tuple[Definition, ...] = (within_10.DEFINITION, within_8.DEFINITION, pedig_exotropia_adapted.DEFINITION)

__all__ = ["DEFINITIONS", "Definition", "Verdict"]
